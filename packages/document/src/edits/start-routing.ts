import { LIMITS, orderKeyAt, parseName } from '@loopwright/model';
import type { Write } from '../cells.ts';
import type { Reading } from '../reading/reading.ts';
import type { EditNamed, EditWrites } from './edit-named.ts';
import { frameOfLoop } from './new-loop.ts';
import { frameOfRound } from './new-round.ts';
import { isFreeId } from './open-routing.ts';
import { seatThing } from './seat-thing.ts';

/**
 * Starts a routing without holes, after the others, with its loops and rounds.
 *
 * @returns `nothing` when the board has as many routings as it can or had one of that id, or for more loops or rounds
 *   than a routing can have
 * @throws RangeError if an id is none: the caller's bug
 */
export function startRouting(edit: EditNamed<'start routing'>, reading: Reading): EditWrites {
  const { routing: id, loops, rounds } = edit;
  const { routings } = reading.plan;
  if (routings.length >= LIMITS.routings || !isFreeId(reading, 'routings', id)) return 'nothing';
  if (loops.length > LIMITS.loopsPerRouting || rounds.length > LIMITS.roundsPerRouting) return 'nothing';
  const isFree = [...loops.map((loop) => ['loops', loop] as const), ...rounds.map((one) => ['rounds', one] as const)];
  if (!isFree.every(([root, thing]) => isFreeId(reading, root, `${id}/${thing.id}`))) return 'nothing';
  const seat = (root: 'loops' | 'rounds', group: string, place: number): Write => {
    return { root, group, part: 'seat', value: { in: 'plan', key: orderKeyAt(place) } };
  };
  const known = new Set(loops.map((loop) => loop.id));
  return [
    { root: 'routings', group: id, part: 'name', value: parseName(edit.name, LIMITS.name) ?? 'Routing' },
    { root: 'routings', group: id, part: 'locked', value: false },
    ...seatThing(reading, 'routings', id, { others: routings.map((one) => one.id), index: routings.length - 1 }),
    ...loops.flatMap((loop, place) => {
      const group = `${id}/${loop.id}`;
      return [seat('loops', group, place), ...frameOfLoop(group, loop)];
    }),
    ...rounds.flatMap((round, place) => {
      const group = `${id}/${round.id}`;
      return [seat('rounds', group, place), ...frameOfRound(group, round, known)];
    }),
  ];
}
