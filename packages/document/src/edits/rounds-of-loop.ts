import type { LoopId, Routing } from '@loopwright/model';
import type { Write } from '../cells.ts';
import type { Reading } from '../reading/reading.ts';
import { unseatThing } from './seat-thing.ts';

/** The loops of every round as `change` leaves them, where that differs. A round is one value: its loops and their order. */
export function changedRounds(
  routing: Routing,
  change: (loops: readonly LoopId[]) => readonly LoopId[],
): readonly Write[] {
  return routing.rounds.map(({ id, loops }): Write => {
    return { root: 'rounds', group: `${routing.id}/${id}`, part: 'loops', value: change(loops) };
  });
}

/** Rounds lose a loop. One that was nothing but that loop goes too, unless no round would be left. */
export function roundsWithout(reading: Reading, routing: Routing, loop: LoopId): readonly Write[] {
  const without = (loops: readonly LoopId[]) => loops.filter((id) => id !== loop);
  const emptied = routing.rounds.filter(({ loops }) => loops.includes(loop) && without(loops).length === 0);
  const gone = emptied.length < routing.rounds.length ? emptied : emptied.slice(1);
  const left = routing.rounds.filter((round) => !gone.includes(round));
  return [
    ...changedRounds({ ...routing, rounds: left }, without),
    ...gone.map(({ id }) => unseatThing(reading, 'rounds', `${routing.id}/${id}`)),
  ];
}
