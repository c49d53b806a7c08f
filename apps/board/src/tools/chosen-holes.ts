import { type HoleId, holeOf, type Routing } from '@loopwright/model';
import type { Selection } from '../board/parts.ts';

/** Every hole picked out, in the order they were picked; those that are no longer on the plan are left out. */
export function chosenHoles(routing: Routing, { hole, also = [] }: Selection): readonly HoleId[] {
  const chosen = hole === undefined ? also : [...also, hole];
  return [...new Set(chosen)].filter((id) => {
    const found = holeOf(routing, id);
    return found !== undefined && found.seat.in !== 'removed';
  });
}

/** These holes picked out; the last of them is the one whose figures are shown. */
export function choosing(holes: readonly HoleId[]): Selection {
  const each = [...new Set(holes)];
  const hole = each.at(-1);
  if (hole === undefined) return {};
  return each.length === 1 ? { hole } : { hole, also: each.slice(0, -1) };
}

/** One hole more picked out, or one less if it was. */
export function withOrWithout(routing: Routing, selection: Selection, hole: HoleId): Selection {
  const chosen = chosenHoles(routing, selection);
  return choosing(chosen.includes(hole) ? chosen.filter((id) => id !== hole) : [...chosen, hole]);
}

/** All holes on the plan in playing order, spare ones last. */
export function holesInOrder(routing: Routing): readonly HoleId[] {
  return [...routing.loops.flatMap(({ holes }) => holes), ...routing.spare];
}
