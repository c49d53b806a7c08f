import { useId } from 'react';
import { Button } from 'react-aria-components';
import type { Consequences, Reading, Selection } from '../board/parts.ts';
import { holesWords } from '../reading/holes-words.ts';
import { namesOf } from '../reading/names.ts';
import { chosenHoles } from '../tools/chosen-holes.ts';
import type { Asking, HoleHands } from './hole-hands.ts';

interface AskingStripProps extends Consequences {
  readonly reading: Reading;
  readonly selection: Selection;
  readonly hands: HoleHands;
  readonly asking: Asking;
}

/** What is being asked, over the drawing: answered by pointing, or from the list. Esc puts it away. */
export function AskingStrip({ hands, asking, plan, routing, reading, selection }: AskingStripProps) {
  const id = useId();
  if (asking.kind === 'several') {
    const chosen = chosenHoles(routing, selection);
    const names = namesOf(plan, routing, reading.units);
    return (
      <section className="asking" aria-labelledby={id}>
        <p id={id}>Press on holes to choose them or let them go. Chosen: {holesWords({ routing, names }, chosen)}.</p>
        <Button className="button button--main button--small" onPress={() => hands.letGo()}>
          That is all
        </Button>
      </section>
    );
  }
  if (asking.kind !== 'which hole') return null;
  const { words, choices } = asking.question;
  return (
    <section className="asking" aria-labelledby={id}>
      <p id={id}>{words} Press on it on the drawing or on its bead, or choose it here.</p>
      <select
        className="input asking__list"
        aria-labelledby={id}
        value=""
        // biome-ignore lint/a11y/noAutofocus: the question was asked for by a key or a press, and this is where it is answered
        autoFocus
        onChange={(event) => hands.answer(event.target.value)}
      >
        <option value="" disabled>
          Which hole?
        </option>
        {choices.map((choice) => (
          <option key={choice.hole} value={choice.hole}>
            {choice.words}
          </option>
        ))}
      </select>
      <Button className="button button--small" onPress={() => hands.letGo()}>
        Leave it
      </Button>
    </section>
  );
}
