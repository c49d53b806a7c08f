import type { NamedEdit } from '@loopwright/document';
import type { HoleId, LoopId, Routing, RoutingId } from '@loopwright/model';
import { holeOf } from '@loopwright/model';

/** A place a bead can be put down: after another hole of a loop, first in it, or in the tray. */
export type BeadPlace =
  | { readonly in: 'loop'; readonly loop: LoopId; readonly after: HoleId | 'first' }
  | { readonly in: 'tray' };

/** Where a hole sits now, as a place; `undefined` when it is gone. */
export function placeOf(routing: Routing, hole: HoleId): BeadPlace | undefined {
  for (const loop of routing.loops) {
    const index = loop.holes.indexOf(hole);
    if (index >= 0) return { in: 'loop', loop: loop.id, after: loop.holes[index - 1] ?? 'first' };
  }
  return routing.spare.includes(hole) ? { in: 'tray' } : undefined;
}

/** Every place in reading order: first in a loop, after each of its holes, …, then the tray. The bead itself is left out. */
export function placesFor(routing: Routing, hole: HoleId): readonly BeadPlace[] {
  const places: BeadPlace[] = [];
  for (const loop of routing.loops) {
    places.push({ in: 'loop', loop: loop.id, after: 'first' });
    for (const after of loop.holes) if (after !== hole) places.push({ in: 'loop', loop: loop.id, after });
  }
  places.push({ in: 'tray' });
  return places;
}

export function samePlace(first: BeadPlace | undefined, second: BeadPlace | undefined): boolean {
  if (!first || !second) return first === second;
  if (first.in === 'tray' || second.in === 'tray') return first.in === second.in;
  return first.loop === second.loop && first.after === second.after;
}

/** The next place up (−1) or down (+1) the string from where a bead is held; stays at either end. */
export function placeBeside(routing: Routing, hole: HoleId, from: BeadPlace, step: 1 | -1): BeadPlace {
  const places = placesFor(routing, hole);
  const index = places.findIndex((place) => samePlace(place, from));
  return places[Math.min(Math.max(index + step, 0), places.length - 1)] ?? from;
}

/**
 * The edit that puts a hole there; `undefined` where it already is.
 *
 * @param routing  as it was when the bead was picked up, without the drag in progress
 */
export function editFor(routing: Routing, hole: HoleId, place: BeadPlace): NamedEdit | undefined {
  if (samePlace(placeOf(routing, hole), place)) return undefined;
  const of: { routing: RoutingId; hole: HoleId } = { routing: routing.id, hole };
  if (place.in === 'tray') return { ...of, edit: 'take out' };
  const seated = holeOf(routing, hole)?.seat.in === 'loop';
  return { ...of, edit: seated ? 'move in the round' : 'bring back', loop: place.loop, after: place.after };
}

/** The place at the end of the last loop: where a spare hole comes back when nothing else is said. */
export function lastPlace(routing: Routing): BeadPlace | undefined {
  const loop = routing.loops.at(-1);
  return loop && { in: 'loop', loop: loop.id, after: loop.holes.at(-1) ?? 'first' };
}
