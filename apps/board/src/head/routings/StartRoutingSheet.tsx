import { type Routing, STARTING_HOLES, type StartingHoles } from '@loopwright/model';
import { useState } from 'react';
import type { DoEdit, HeadProps } from '../../board/parts.ts';
import { freshId } from '../../reading/fresh-id.ts';
import { NameSheet } from '../../style/NameSheet.tsx';
import { nextRoutingName } from './routing-words.ts';
import { STARTING_WORDS, startRoutingEdit } from './start-routing.ts';

interface StartRoutingSheetProps {
  readonly routings: readonly Pick<Routing, 'name'>[];
  readonly edit: DoEdit;
  readonly onRouting: HeadProps['onRouting'];
  readonly onClose: () => void;
}

/** Asks what a new, empty routing is called and how many holes it is laid out for. */
export function StartRoutingSheet({ routings, edit, onRouting, onClose }: StartRoutingSheetProps) {
  const [holes, setHoles] = useState<StartingHoles>(18);
  const start = (name: string) => {
    const routing = freshId('r');
    edit(startRoutingEdit({ routing, name, holes, freshId }));
    onRouting(routing);
  };
  return (
    <NameSheet
      title="A new, empty routing"
      label="Its name"
      name={nextRoutingName(routings)}
      does="Start it"
      onName={start}
      onClose={onClose}
    >
      <label className="field">
        <span className="field__label">Laid out for</span>
        <select
          className="input"
          value={String(holes)}
          onChange={(event) => setHoles(STARTING_HOLES.find((each) => String(each) === event.target.value) ?? 18)}
        >
          {STARTING_HOLES.map((each) => (
            <option key={each} value={String(each)}>
              {STARTING_WORDS[each]}
            </option>
          ))}
        </select>
      </label>
      <p className="small soft">Land, tees and limits are the board’s: every routing lies on the same ground.</p>
    </NameSheet>
  );
}
