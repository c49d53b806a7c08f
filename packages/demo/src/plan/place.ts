import type { Ring, SitePoint } from '@loopwright/model';

/** A place on the invented site: metres east and north of its south-west corner. */
export type Place = readonly [x: number, y: number];

/** A laid place as a point of the site plane. */
export function at([x, y]: Place): SitePoint {
  return { x, y };
}

/** Laid places as an outline or line. */
export function outlined(places: readonly Place[]): Ring {
  return places.map(at);
}
