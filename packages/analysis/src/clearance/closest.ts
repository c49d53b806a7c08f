import { closestOnPolyline, distanceBetween } from '@loopwright/geometry';
import type { SitePoint } from '@loopwright/model';

/** Two places and how far they are apart. */
export interface Closest {
  readonly distance: number;
  readonly first: SitePoint;
  readonly second: SitePoint;
}

/** The closest two of some places; `undefined` when there is none on either side. */
export function closestPlaces(first: readonly SitePoint[], second: readonly SitePoint[]): Closest | undefined {
  let best: Closest | undefined;
  for (const a of first) {
    for (const b of second) {
      const distance = distanceBetween(a, b);
      if (!best || distance < best.distance) best = { distance, first: a, second: b };
    }
  }
  return best;
}

/** The place that comes closest to a line. */
export function closestToLine(places: readonly SitePoint[], line: readonly SitePoint[]): Closest | undefined {
  let best: Closest | undefined;
  for (const place of places) {
    const { distance, point } = closestOnPolyline(place, line);
    if (!best || distance < best.distance) best = { distance, first: place, second: point };
  }
  return best;
}
