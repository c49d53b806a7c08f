import type { DrawerProps } from '../../board/parts.ts';
import { holeWords, namesOf } from '../../reading/names.ts';
import { choosing, chosenHoles, holesInOrder, withOrWithout } from '../../tools/chosen-holes.ts';

/** Every hole of the plan with a tick where it is chosen: several can be, without a pointer. */
export function WhichHoles({ plan, routing, reading, selection, select }: DrawerProps) {
  const names = namesOf(plan, routing, reading.units);
  const chosen = chosenHoles(routing, selection);
  const all = holesInOrder(routing);
  return (
    <fieldset className="which-holes">
      <legend className="field__label">Chosen</legend>
      <label className="which-holes__hole">
        <input
          type="checkbox"
          checked={chosen.length === all.length}
          onChange={(event) => select(event.target.checked ? choosing(all) : {})}
        />
        all
      </label>
      {all.map((hole) => (
        <label key={hole} className="which-holes__hole">
          <input
            type="checkbox"
            aria-label={holeWords(routing, names, hole)}
            checked={chosen.includes(hole)}
            onChange={() => select(withOrWithout(routing, selection, hole))}
          />
          {names.number(hole)}
        </label>
      ))}
    </fieldset>
  );
}
