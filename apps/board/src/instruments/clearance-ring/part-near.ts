import type { Analysis } from '@loopwright/analysis';
import { distanceBetween } from '@loopwright/geometry';
import type { HoleId, PartId, Routing, SitePoint } from '@loopwright/model';

export interface PartNear {
  readonly hole: HoleId;
  readonly part: PartId;
  readonly at: SitePoint;
}

/** The part of a hole nearest to a place, within reach; a green is reached anywhere on it. Proposed tees are parts too. */
export function partNear(routing: Routing, analysis: Analysis, at: SitePoint, reach: number): PartNear | undefined {
  let best: (PartNear & { readonly distance: number }) | undefined;
  const offer = (hole: HoleId, part: PartId, place: SitePoint, about: number) => {
    const distance = Math.max(0, distanceBetween(place, at) - about);
    if (distance <= reach && (!best || distance < best.distance)) best = { hole, part, at: place, distance };
  };
  for (const hole of routing.holes) {
    if (hole.seat.in === 'removed') continue;
    for (const tee of analysis.holes.get(hole.id)?.tees ?? []) offer(hole.id, `tee:${tee.teeSet}`, tee.at, 0);
    for (const turn of hole.turnPoints) offer(hole.id, `turn:${turn.id}`, turn.at, 0);
    if (hole.green) {
      offer(hole.id, 'green', hole.green.centre, Math.min(hole.green.length, hole.green.width) / 2);
    }
  }
  return best;
}
