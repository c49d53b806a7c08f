import { LIMITS } from '@loopwright/model';
import type { Reading } from '../reading/reading.ts';
import type { EditNamed, EditWrites } from './edit-named.ts';
import { newLoop } from './new-loop.ts';
import { writeOfHole } from './open-hole.ts';
import { openLoop } from './open-routing.ts';
import { changedRounds } from './rounds-of-loop.ts';
import { placedIn } from './seat-hole.ts';

/**
 * Makes a loop of its own of the holes that come after one. It follows the first in the list and in every round, so
 * that no round plays other holes than before. Holes keep the keys of their seats: joining the two is the same again.
 *
 * @returns `gone` when the hole is not in that loop any more; `nothing` when no hole comes after it, or when the
 *   routing or a round has as many loops as it can
 */
export function splitLoop(edit: EditNamed<'split loop'>, reading: Reading): EditWrites {
  const open = openLoop(reading, edit);
  if (typeof open === 'string') return open;
  const { routing, loop } = open;
  const at = loop.holes.indexOf(edit.after);
  if (at < 0) return 'gone';
  const on = loop.holes.slice(at + 1);
  const follow = (loops: readonly string[]) => loops.flatMap((id) => (id === loop.id ? [id, edit.as.id] : [id]));
  if (on.length === 0) return 'nothing';
  if (routing.rounds.some(({ loops }) => follow(loops).length > LIMITS.loopsPerRound)) return 'nothing';
  const made = newLoop(reading, routing, edit.as, loop.id);
  if (made === 'nothing') return 'nothing';
  return [
    ...made,
    ...changedRounds(routing, follow),
    ...placedIn(routing, on).map(({ id, key }) =>
      writeOfHole(routing.id, id, 'seat', { in: 'loop', loop: edit.as.id, key }),
    ),
  ];
}
