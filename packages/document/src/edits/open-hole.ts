import { type Hole, type HoleId, holeOf, type Routing, type RoutingId } from '@loopwright/model';
import type { Write } from '../cells.ts';
import type { Reading } from '../reading/reading.ts';

/** A hole that may be edited, with the means to write its parts. */
export interface OpenHole {
  readonly routing: Routing;
  readonly hole: Hole;
  write(part: string, value: unknown): Write;
}

/** A routing by its id. */
export function routingOf(reading: Reading, id: RoutingId): Routing | undefined {
  return reading.plan.routings.find((routing) => routing.id === id);
}

/** A write to one part of a hole. */
export function writeOfHole(routing: RoutingId, hole: HoleId, part: string, value: unknown): Write {
  return { root: 'holes', group: `${routing}/${hole}`, part, value };
}

/**
 * The hole an edit speaks of.
 *
 * @returns `gone` when the hole or its routing is not on the plan any more; `nothing` when the routing is locked, so
 *   that no edit changes it
 */
export function openHole(
  reading: Reading,
  of: { readonly routing: RoutingId; readonly hole: HoleId },
): OpenHole | 'gone' | 'nothing' {
  const routing = routingOf(reading, of.routing);
  const hole = routing && holeOf(routing, of.hole);
  if (!routing || !hole || hole.seat.in === 'removed') return 'gone';
  if (routing.locked) return 'nothing';
  return { routing, hole, write: (part, value) => writeOfHole(routing.id, hole.id, part, value) };
}
