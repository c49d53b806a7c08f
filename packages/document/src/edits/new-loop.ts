import { isId, LIMITS, type LoopId, parseName, type Routing } from '@loopwright/model';
import type { Write } from '../cells.ts';
import type { Reading } from '../reading/reading.ts';
import { groupsIn, isFreeId } from './open-routing.ts';
import type { NewLoop } from './routing-edit.ts';
import { seatThing } from './seat-thing.ts';

/** The name and base of a new loop. */
export function frameOfLoop(group: string, { name, base }: NewLoop): readonly Write[] {
  return [
    { root: 'loops', group, part: 'name', value: parseName(name, LIMITS.name) ?? 'Loop' },
    { root: 'loops', group, part: 'base', value: isId(base) ? base : null },
  ];
}

/**
 * A new loop after another, or first; last when that one is not there any more.
 *
 * @returns `nothing` when the routing has as many loops as it can, or had one of that id
 */
export function newLoop(
  reading: Reading,
  routing: Routing,
  loop: NewLoop,
  after: LoopId | 'first',
): readonly Write[] | 'nothing' {
  const group = `${routing.id}/${loop.id}`;
  if (routing.loops.length >= LIMITS.loopsPerRouting || !isFreeId(reading, 'loops', group)) return 'nothing';
  const others = groupsIn(routing.id, routing.loops);
  const at = routing.loops.findIndex(({ id }) => id === after);
  const index = after === 'first' ? -1 : at < 0 ? others.length - 1 : at;
  return [...frameOfLoop(group, loop), ...seatThing(reading, 'loops', group, { others, index })];
}
