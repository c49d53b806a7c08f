import type { Element, LonLat } from '../geojson/element.ts';
import { runsOf } from '../geojson/element.ts';
import { middleOf, roughDistance } from './courses.ts';

/** What lies farther than this from a course's holes and boundary does not concern it (m). */
export const SURROUNDINGS = 300;

/** A box of longitudes and latitudes around a course and what concerns it. */
export interface Surroundings {
  /** Its middle, by the holes alone: the site plane's origin. */
  readonly middle: LonLat;
  includes(element: Element): boolean;
}

export function surroundingsOf(
  centre: LonLat,
  { holes, boundaries }: { readonly holes: readonly Element[]; readonly boundaries: readonly Element[] },
): Surroundings {
  const near = holes.filter((hole) => roughDistance(middleOf(hole), centre) <= STRAY);
  const ofHoles = boxOf(near);
  const box = boxOf([...near, ...boundaries]);
  const middle = { lon: (ofHoles.west + ofHoles.east) / 2, lat: (ofHoles.south + ofHoles.north) / 2 };
  const latMargin = SURROUNDINGS / 110_574;
  const lonMargin = SURROUNDINGS / (111_320 * Math.cos((middle.lat * Math.PI) / 180));
  return {
    middle,
    includes(element) {
      const other = boxOf([element]);
      const isBeside = other.east < box.west - lonMargin || other.west > box.east + lonMargin;
      return !isBeside && other.north >= box.south - latMargin && other.south <= box.north + latMargin;
    },
  };
}

/** A hole farther than this from the middle of a course does not move its plane (m). */
const STRAY = 5_000;

interface LonLatBox {
  readonly west: number;
  readonly east: number;
  readonly south: number;
  readonly north: number;
}

/** The box around some elements; inside out when there are none. */
function boxOf(elements: readonly Element[]): LonLatBox {
  let west = Number.POSITIVE_INFINITY;
  let east = Number.NEGATIVE_INFINITY;
  let south = Number.POSITIVE_INFINITY;
  let north = Number.NEGATIVE_INFINITY;
  for (const { shape } of elements) {
    for (const run of runsOf(shape)) {
      for (const { lon, lat } of run) {
        west = Math.min(west, lon);
        east = Math.max(east, lon);
        south = Math.min(south, lat);
        north = Math.max(north, lat);
      }
    }
  }
  return { west, east, south, north };
}
