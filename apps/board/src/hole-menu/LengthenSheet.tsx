import { type HoleId, holeOf } from '@loopwright/model';
import { type FormEvent, useId, useState } from 'react';
import { Button, Heading } from 'react-aria-components';
import type { Consequences, DoEdit, Reading } from '../board/parts.ts';
import { lengthFigure, unitSymbol } from '../reading/lengths.ts';
import { holeWords, namesOf } from '../reading/names.ts';
import { Sheet } from '../style/Sheet.tsx';
import { lengthenedTo, lineEnds } from './lengthened.ts';

interface LengthenSheetProps extends Consequences {
  readonly hole: HoleId;
  readonly reading: Reading;
  readonly edit: DoEdit;
  readonly onClose: () => void;
}

/** Asks by how much, or to what length, a hole is lengthened, and at which end. */
export function LengthenSheet({ plan, routing, analysis, hole: id, reading, edit, onClose }: LengthenSheetProps) {
  const hole = holeOf(routing, id);
  const ends = hole ? lineEnds(hole, analysis.holes.get(id), plan.teeSets, reading.teeSet) : [];
  const [chosen, setChosen] = useState(ends[0]?.end);
  const [typed, setTyped] = useState('');
  const [wrong, setWrong] = useState('');
  const hint = useId();
  const end = ends.find((each) => each.end === chosen) ?? ends[0];
  const lengthen = (event: FormEvent) => {
    event.preventDefault();
    if (!end) return onClose();
    const result = lengthenedTo({ routing: routing.id, hole: id }, end, typed, reading.units);
    if (result.kind === 'wrong') return setWrong(result.why);
    if (result.kind === 'edit') edit(result.edit);
    return onClose();
  };
  return (
    <Sheet onClose={onClose}>
      <Heading slot="title">Lengthen {holeWords(routing, namesOf(plan, routing, reading.units), id)}</Heading>
      <form className="popover__inside" onSubmit={lengthen}>
        <label className="field">
          <span className="field__label">Which end moves along the line</span>
          <select
            className="input"
            value={end?.end}
            onChange={(event) => setChosen(ends.find((each) => each.end === event.target.value)?.end)}
          >
            {ends.map((each) => (
              <option key={each.end} value={each.end}>
                {each.words}: {lengthFigure(each.length, reading.units)} {unitSymbol(reading.units)}
              </option>
            ))}
          </select>
        </label>
        <label className="field">
          <span className="field__label">Length, or how much more</span>
          <input
            className="input input--figure"
            value={typed}
            // biome-ignore lint/a11y/noAutofocus: a dialog begins at the field it was asked for
            autoFocus
            aria-describedby={hint}
            aria-invalid={wrong !== ''}
            onChange={(event) => setTyped(event.target.value)}
          />
        </label>
        <p id={hint} className={wrong ? 'small field__wrong' : 'small soft'} role={wrong ? 'alert' : undefined}>
          {wrong || `Type 410 for 410 ${unitSymbol(reading.units)} in all, or +10 or -10 for so much more or less.`}
        </p>
        <div className="row">
          <Button className="button button--main" type="submit">
            Lengthen
          </Button>
          <Button className="button" onPress={onClose}>
            Leave it
          </Button>
        </div>
      </form>
    </Sheet>
  );
}
