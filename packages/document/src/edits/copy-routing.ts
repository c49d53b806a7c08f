import { LIMITS, parseName } from '@loopwright/model';
import type { Write } from '../cells.ts';
import type { Reading } from '../reading/reading.ts';
import type { EditNamed, EditWrites } from './edit-named.ts';
import { plainAt } from './hole-parts.ts';
import { routingOf } from './open-hole.ts';
import { isFreeId } from './open-routing.ts';
import { seatThing } from './seat-thing.ts';

/**
 * Copies a routing, key by key: its loops, rounds and holes keep their ids, so that the two compare; what was decided
 * about findings is decided in the copy too. The copy comes after all others and is not locked, so that this is how a
 * locked course is begun to be changed.
 *
 * @returns `nothing` when the board has as many routings as it can or had one of that id
 * @throws RangeError if the new id is none: the caller's bug
 */
export function copyRouting(edit: EditNamed<'copy routing'>, reading: Reading): EditWrites {
  const routing = routingOf(reading, edit.routing);
  if (!routing) return 'gone';
  const { as } = edit;
  const { routings } = reading.plan;
  if (routings.length >= LIMITS.routings || !isFreeId(reading, 'routings', as)) return 'nothing';
  return [
    { root: 'routings', group: as, part: 'name', value: parseName(edit.name, LIMITS.name) ?? routing.name },
    { root: 'routings', group: as, part: 'locked', value: false },
    ...seatThing(reading, 'routings', as, { others: routings.map(({ id }) => id), index: routings.length - 1 }),
    ...(['loops', 'rounds', 'holes', 'dispositions'] as const).flatMap((root) => copied(reading, root, edit)),
  ];
}

/** Every key of one collection that is about the routing, as one about the copy. */
function copied(
  { cells }: Reading,
  root: 'loops' | 'rounds' | 'holes' | 'dispositions',
  { routing, as }: EditNamed<'copy routing'>,
): readonly Write[] {
  const writes: Write[] = [];
  for (const [group, parts] of cells[root]) {
    if (!group.startsWith(`${routing}/`)) continue;
    const own = `${as}${group.slice(routing.length)}`;
    for (const part of parts.keys()) writes.push({ root, group: own, part, value: plainAt(parts, part) });
  }
  return writes;
}
