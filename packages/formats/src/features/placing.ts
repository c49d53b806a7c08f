import { pointToMillimetre, type Site, type SitePoint, type SurveyGrid } from '@loopwright/model';
import { type Element, type LonLat, runsOf } from '../geojson/element.ts';
import { METRES_PER_MAP_UNIT } from '../survey/map-units.ts';
import { siteOf } from '../survey/site-plane.ts';
import type { CoordinateReading } from './coordinates.ts';

/** The way from a file's positions to the site plane. */
export type Placing =
  | {
      readonly kind: 'placed';
      toSite(position: LonLat): SitePoint;
      readonly notes: readonly string[];
      /** A survey grid the board did not have. */
      readonly grid?: SurveyGrid;
    }
  | { readonly kind: 'nowhere'; readonly why: string };

/** A grid that a file brings has its origin on a whole hundred metres. */
const ROUND = 100;

/** How positions that are meant in this way come to lie on the site plane. */
export function placing(elements: readonly Element[], reading: CoordinateReading, site: Site): Placing {
  const { location } = site;
  if (reading.as === 'longitude and latitude') {
    const toSite = location && siteOf(location);
    return toSite
      ? { kind: 'placed', toSite, notes: [] }
      : {
          kind: 'nowhere',
          why: 'The board does not say where on Earth it lies, or says it in a system that is not read here: export the file in the coordinates of the survey.',
        };
  }
  const metres = METRES_PER_MAP_UNIT[reading.unit];
  if (reading.as === 'site plane')
    return {
      kind: 'placed',
      toSite: ({ lon, lat }) => pointToMillimetre({ x: lon * metres, y: lat * metres }),
      notes: [],
    };
  const grid = location?.origin ?? site.grid ?? middleOf(elements, metres);
  const scale = location?.scaleFactor ?? 1;
  const isNew = !location && !site.grid;
  return {
    kind: 'placed',
    toSite: ({ lon, lat }) =>
      pointToMillimetre({ x: (lon * metres - grid.easting) / scale, y: (lat * metres - grid.northing) / scale }),
    notes: isNew
      ? [
          `The board had no survey grid: its origin is now at ${grid.easting} m east, ${grid.northing} m north. What was drawn before lies where it lay; check that the two fit.`,
        ]
      : [],
    ...(isNew && { grid }),
  };
}

/** The middle of what a file holds, on whole hundreds of metres. */
function middleOf(elements: readonly Element[], metres: number): SurveyGrid {
  let [west, east, south, north] = [Infinity, -Infinity, Infinity, -Infinity];
  for (const { shape } of elements)
    for (const { lon, lat } of runsOf(shape).flat()) {
      west = Math.min(west, lon);
      east = Math.max(east, lon);
      south = Math.min(south, lat);
      north = Math.max(north, lat);
    }
  const round = (sum: number) => Math.round(((sum / 2) * metres) / ROUND) * ROUND + 0;
  return { easting: round(west + east), northing: round(south + north) };
}
