import { isId, type Loop, type LoopId, type Routing, type RoutingId } from '@loopwright/model';
import { partsOf } from '../cells.ts';
import type { Reading } from '../reading/reading.ts';
import type { Root } from '../roots.ts';
import { isUnused } from './hole-parts.ts';
import { routingOf } from './open-hole.ts';

/** The routing an edit speaks of: `gone` when it is not on the plan any more, `nothing` when it is locked. */
export function openRouting(reading: Reading, id: RoutingId): Routing | 'gone' | 'nothing' {
  const routing = routingOf(reading, id);
  if (!routing) return 'gone';
  return routing.locked ? 'nothing' : routing;
}

/** A loop of a routing that may be edited. */
export interface OpenLoop {
  readonly routing: Routing;
  readonly loop: Loop;
}

/** The loop an edit speaks of: `gone` when it or its routing is not there any more, `nothing` when that is locked. */
export function openLoop(
  reading: Reading,
  of: { readonly routing: RoutingId; readonly loop: LoopId },
): OpenLoop | 'gone' | 'nothing' {
  const routing = openRouting(reading, of.routing);
  if (typeof routing === 'string') return routing;
  const loop = routing.loops.find(({ id }) => id === of.loop);
  return loop ? { routing, loop } : 'gone';
}

/**
 * Whether something new may have this id: it was never used, or everything about it was taken back.
 *
 * @throws RangeError if it is no id: the caller's bug
 */
export function isFreeId(reading: Reading, root: Root, group: string): boolean {
  if (!isId(group.slice(group.lastIndexOf('/') + 1))) throw new RangeError(`'${group}' ends in no id`);
  return isUnused(partsOf(reading.cells, root, group));
}

/** The groups of a routing's loops or rounds, in their order. */
export function groupsIn(routing: RoutingId, things: readonly { readonly id: string }[]): readonly string[] {
  return things.map(({ id }) => `${routing}/${id}`);
}
