import { useState } from 'react';
import { Button, FileTrigger, Form, Input, Label, TextField } from 'react-aria-components';
import type { HomeProps } from '../board/parts.ts';
import { PICTURE_TYPES } from '../images/picture-types.ts';
import { chance } from '../instruments/chance.ts';
import { writeKept } from '../live/kept.ts';
import { Choices } from '../style/Choices.tsx';
import { Problem } from './ImportSheet.tsx';
import { FIRST_WISHES, filesWords, HOLES_CHOICES, holesOf, planFor, UNIT_CHOICES } from './new-board.ts';

interface NewBoardProps extends HomeProps {
  /** Pictures that were dropped, or chosen here. */
  readonly files: readonly File[];
  readonly onFiles: (files: readonly File[]) => void;
}

const NO_ANSWER = 'The server did not answer: nothing was made. Check the connection and try again.';

/** A board from nothing: its name, units and loops, and the picture to begin with. */
export function NewBoard({ createBoard, openLink, files, onFiles }: NewBoardProps) {
  const [name, setName] = useState('');
  const [units, setUnits] = useState(FIRST_WISHES.units);
  const [holes, setHoles] = useState(FIRST_WISHES.holes);
  const [making, setMaking] = useState(false);
  const [problem, setProblem] = useState('');
  const make = async () => {
    setMaking(true);
    setProblem('');
    const plan = planFor({ name, units, holes, files }, chance);
    const answer = await createBoard({ name: plan.site.name, plan }).catch(
      () => ({ kind: 'refused', why: NO_ANSWER }) as const,
    );
    setMaking(false);
    if (answer.kind === 'refused') return setProblem(answer.why);
    writeKept('units', units); // whoever makes the board reads it so
    openLink(answer.link, files);
  };
  return (
    <section className="home__part" aria-labelledby="home-new">
      <h2 id="home-new" className="home__heading">
        A new board
      </h2>
      <Form
        className="import__form"
        onSubmit={(event) => {
          event.preventDefault();
          if (!making) void make();
        }}
      >
        <TextField className="field" value={name} onChange={setName} maxLength={120} isDisabled={making}>
          <Label className="field__label">Name of the site</Label>
          <Input className="input" />
        </TextField>
        <div className="row">
          <Choices label="Lengths in" choices={UNIT_CHOICES} chosen={units} onChoose={setUnits} />
          <Choices
            label="Holes to begin with"
            choices={HOLES_CHOICES}
            chosen={String(holes)}
            onChoose={(key) => setHoles(holesOf(key))}
          />
        </div>
        <ChosenFiles files={files} onFiles={onFiles} />
        <Button type="submit" className="button button--main" isDisabled={making}>
          {making ? 'Making the board …' : 'Make the board'}
        </Button>
      </Form>
      {problem && <Problem words={problem} />}
    </section>
  );
}

function ChosenFiles({ files, onFiles }: Pick<NewBoardProps, 'files' | 'onFiles'>) {
  return (
    <div className="new-board__files">
      <FileTrigger
        allowsMultiple
        acceptedFileTypes={PICTURE_TYPES}
        onSelect={(chosen) => {
          if (chosen) onFiles([...chosen]);
        }}
      >
        <Button className="button">{files.length === 0 ? 'Choose a picture …' : 'Choose others …'}</Button>
      </FileTrigger>
      {files.length > 0 && (
        <Button className="button button--quiet" onPress={() => onFiles([])}>
          Without a picture
        </Button>
      )}
      <p className="small soft" role="status">
        {filesWords(files)}
      </p>
    </div>
  );
}
