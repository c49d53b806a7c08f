import { useState } from 'react';
import { Button, Form, Input, Label, TextField } from 'react-aria-components';
import type { HomeProps } from '../board/parts.ts';
import { Problem } from './ImportSheet.tsx';

const NO_ANSWER = 'The server did not answer: nothing was made. Check the connection and try again.';

/** A board with nothing on it yet. */
export function EmptyBoard({ createBoard, openLink }: HomeProps) {
  const [name, setName] = useState('');
  const [making, setMaking] = useState(false);
  const [problem, setProblem] = useState('');
  const make = async () => {
    setMaking(true);
    setProblem('');
    const wanted = name.trim();
    const answer = await createBoard(wanted === '' ? {} : { name: wanted }).catch(
      () => ({ kind: 'refused', why: NO_ANSWER }) as const,
    );
    setMaking(false);
    if (answer.kind === 'created') openLink(answer.link);
    else setProblem(answer.why);
  };
  return (
    <section className="home__part" aria-labelledby="home-empty">
      <h2 id="home-empty" className="home__heading">
        An empty board
      </h2>
      <Form
        className="import__form"
        onSubmit={(event) => {
          event.preventDefault();
          void make();
        }}
      >
        <TextField className="field" value={name} onChange={setName} maxLength={120} isDisabled={making}>
          <Label className="field__label">Name of the site</Label>
          <Input className="input" />
        </TextField>
        <div className="row">
          <Button type="submit" className="button" isDisabled={making}>
            {making ? 'Making the board …' : 'Make an empty board'}
          </Button>
        </div>
      </Form>
      {problem && <Problem words={problem} />}
    </section>
  );
}
