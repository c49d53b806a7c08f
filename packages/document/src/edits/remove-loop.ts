import type { Reading } from '../reading/reading.ts';
import type { EditNamed, EditWrites } from './edit-named.ts';
import { writeOfHole } from './open-hole.ts';
import { openLoop } from './open-routing.ts';
import { keysAfterAll } from './order.ts';
import { roundsWithout } from './rounds-of-loop.ts';
import { placedIn } from './seat-hole.ts';
import { unseatThing } from './seat-thing.ts';

/** Takes a loop away: its holes go to the end of the spare tray, in their order, and rounds lose it. */
export function removeLoop(edit: EditNamed<'remove loop'>, reading: Reading): EditWrites {
  const open = openLoop(reading, edit);
  if (typeof open === 'string') return open;
  const { routing, loop } = open;
  const keys = keysAfterAll(placedIn(routing, routing.spare), loop.holes.length);
  return [
    ...loop.holes.map((hole, place) => {
      return writeOfHole(routing.id, hole, 'seat', { in: 'spare', key: keys[place] ?? 'a0' });
    }),
    ...roundsWithout(reading, routing, loop.id),
    unseatThing(reading, 'loops', `${routing.id}/${loop.id}`),
  ];
}
