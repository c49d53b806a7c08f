import type { NamedEdit } from '@loopwright/document';
import type { HoleId, LoopId, Routing, RoutingId } from '@loopwright/model';
import { holeOf } from '@loopwright/model';
import { severalEdit } from '../tools/several-edit.ts';

/** A place a bead can be put down: after another hole of a loop, first in it, or in the tray. */
export type BeadPlace =
  | { readonly in: 'loop'; readonly loop: LoopId; readonly after: HoleId | 'first' }
  | { readonly in: 'tray' };

/** Where a hole sits now, as a place; `undefined` when it is gone. */
export function placeOf(routing: Routing, hole: HoleId): BeadPlace | undefined {
  return placeAmong(routing, hole, [hole]);
}

/** Where a hole of several sits, by the nearest hole before it that is none of them. */
export function placeAmong(routing: Routing, hole: HoleId, held: readonly HoleId[]): BeadPlace | undefined {
  for (const loop of routing.loops) {
    const index = loop.holes.indexOf(hole);
    if (index < 0) continue;
    const before = loop.holes.slice(0, index).findLast((id) => !held.includes(id));
    return { in: 'loop', loop: loop.id, after: before ?? 'first' };
  }
  return routing.spare.includes(hole) ? { in: 'tray' } : undefined;
}

/** Every place in reading order: first in a loop, after each of its holes, …, then the tray. Those in the hand are left out. */
export function placesFor(routing: Routing, held: readonly HoleId[]): readonly BeadPlace[] {
  const places: BeadPlace[] = [];
  for (const loop of routing.loops) {
    places.push({ in: 'loop', loop: loop.id, after: 'first' });
    for (const after of loop.holes) if (!held.includes(after)) places.push({ in: 'loop', loop: loop.id, after });
  }
  places.push({ in: 'tray' });
  return places;
}

export function samePlace(first: BeadPlace | undefined, second: BeadPlace | undefined): boolean {
  if (!first || !second) return first === second;
  if (first.in === 'tray' || second.in === 'tray') return first.in === second.in;
  return first.loop === second.loop && first.after === second.after;
}

/** The next place up (−1) or down (+1) the string from where beads are held; stays at either end. */
export function placeBeside(routing: Routing, held: readonly HoleId[], from: BeadPlace, step: 1 | -1): BeadPlace {
  const places = placesFor(routing, held);
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

/** The edit that puts several holes there, one after the other in the order given; `undefined` where they already are. */
export function editForSeveral(routing: Routing, holes: readonly HoleId[], place: BeadPlace): NamedEdit | undefined {
  const [only] = holes;
  if (only !== undefined && holes.length === 1) return editFor(routing, only, place);
  if (place.in === 'tray') {
    const seated = holes.filter((hole) => holeOf(routing, hole)?.seat.in === 'loop');
    const out = seated.map((hole): NamedEdit => ({ edit: 'take out', routing: routing.id, hole }));
    return severalEdit(`take out ${seated.length} holes`, out);
  }
  if (stand(routing, holes, place)) return undefined;
  const edits = holes.map((hole, index): NamedEdit => {
    const edit = holeOf(routing, hole)?.seat.in === 'loop' ? 'move in the round' : 'bring back';
    return { edit, routing: routing.id, hole, loop: place.loop, after: holes[index - 1] ?? place.after };
  });
  return severalEdit(`renumber ${holes.length} holes`, edits);
}

/** Whether these holes follow each other at that place already. */
function stand(routing: Routing, holes: readonly HoleId[], place: Extract<BeadPlace, { in: 'loop' }>): boolean {
  const loop = routing.loops.find(({ id }) => id === place.loop);
  const first = place.after === 'first' ? 0 : (loop?.holes.indexOf(place.after) ?? -1) + 1;
  return holes.every((hole, index) => loop?.holes[first + index] === hole);
}

/** The place at the end of the last loop: where a spare hole comes back when nothing else is said. */
export function lastPlace(routing: Routing): BeadPlace | undefined {
  const loop = routing.loops.at(-1);
  return loop && { in: 'loop', loop: loop.id, after: loop.holes.at(-1) ?? 'first' };
}
