import type { LoopId } from '@loopwright/model';
import type { Reading } from '../reading/reading.ts';
import type { EditNamed, EditWrites } from './edit-named.ts';
import { writeOfHole } from './open-hole.ts';
import { openLoop } from './open-routing.ts';
import { keysAfterAll } from './order.ts';
import { changedRounds } from './rounds-of-loop.ts';
import { placedIn } from './seat-hole.ts';
import { unseatThing } from './seat-thing.ts';

/**
 * The holes of one loop follow those of another, and the loop they leave is no more. A round that played both plays the
 * first; one that played only the second plays the first in its place, so that no round loses holes.
 */
export function joinLoops(edit: EditNamed<'join loops'>, reading: Reading): EditWrites {
  const open = openLoop(reading, edit);
  if (typeof open === 'string') return open;
  const { routing, loop } = open;
  const other = routing.loops.find(({ id }) => id === edit.with);
  if (!other) return 'gone';
  if (other.id === loop.id) return 'nothing';
  const [own, others] = [placedIn(routing, loop.holes), placedIn(routing, other.holes)];
  // Keys that already come after are kept: what was split is joined to the same order.
  const isAfter = (own.at(-1)?.key ?? '') < (others[0]?.key ?? 'a0');
  const fresh = isAfter ? others.map(({ key }) => key) : keysAfterAll(own, others.length);
  return [
    ...others.map(({ id, key }, place) => {
      return writeOfHole(routing.id, id, 'seat', { in: 'loop', loop: loop.id, key: fresh[place] ?? key });
    }),
    ...changedRounds(routing, (loops) => joined(loops, loop.id, other.id)),
    unseatThing(reading, 'loops', `${routing.id}/${other.id}`),
  ];
}

function joined(loops: readonly LoopId[], loop: LoopId, other: LoopId): readonly LoopId[] {
  if (!loops.includes(other)) return loops;
  if (loops.includes(loop)) return loops.filter((id) => id !== other);
  return loops.map((id) => (id === other ? loop : id));
}
