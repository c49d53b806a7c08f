import { isFields, parseText, type Site } from '@loopwright/model';
import { roughDistance } from '../course/courses.ts';
import { isOnGrid, swapped } from '../geojson/axis-order.ts';
import type { Element, LonLat } from '../geojson/element.ts';
import type { MapUnit } from '../survey/map-units.ts';

/** How the two numbers of a position may be meant. */
export type CoordinateReading =
  | { readonly as: 'longitude and latitude' }
  /** Distances from the origin of the site plane. */
  | { readonly as: 'site plane'; readonly unit: MapUnit }
  /** Easting and northing in the survey grid of the board; without one, the file brings it. */
  | { readonly as: 'survey grid'; readonly unit: MapUnit };

/** What is known of a file's coordinates. */
export type KnownCoordinates =
  | { readonly kind: 'known'; readonly reading: CoordinateReading; readonly turned: boolean; readonly note?: string }
  /** `why`: what is open, in a sentence; `readings`: what may be meant, the likeliest first. */
  | { readonly kind: 'open'; readonly why: string; readonly readings: readonly CoordinateReading['as'][] }
  | { readonly kind: 'nowhere'; readonly why: string };

/** A file of longitudes and latitudes belongs to a site that lies so near to it (m). */
const NEAR_THE_SITE = 50_000;
/** Numbers this near to zero may be metres from an origin on the site; survey grids have larger ones. */
const NEAR_AN_ORIGIN = 20_000;
/** Of positions that were meant as longitude and latitude, at least this share lies on Earth. */
const MOST = 0.99;

/** Geographic systems whose longitude and latitude lie within some 2 m of WGS 84's. */
const GEOGRAPHIC = new Map([
  [4326, 0],
  [4258, 1],
  [4269, 2],
]);

/** The EPSG code a file names in the member `crs` of the GeoJSON of 2008; 4326 for longitude and latitude by name. */
export function epsgOf(value: unknown): number | undefined {
  const crs = isFields(value) && isFields(value.crs) ? value.crs : undefined;
  const properties = crs && isFields(crs.properties) ? crs.properties : undefined;
  const name = parseText(properties?.name ?? (crs?.type === 'EPSG' ? properties?.code : undefined), 100);
  if (name === undefined) return undefined;
  if (/CRS84/i.test(name)) return 4326;
  const code = /EPSG:(?:[\d.]*:)?(\d{4,6})$/i.exec(name)?.[1];
  return code === undefined ? undefined : Number(code);
}

/**
 * How positions are meant: as the file says, or as longitude and latitude where that puts them at the site, which is
 * what GeoJSON says of itself (RFC 7946, section 4). Everything else is asked, never guessed.
 */
export function knownCoordinates(elements: readonly Element[], epsg: number | undefined, site: Site): KnownCoordinates {
  const positions = allPositions(elements);
  const { location } = site;
  if (epsg !== undefined && location?.epsg === epsg)
    return known(`Placed by the survey grid that both the file and the board name, EPSG:${epsg}.`);
  const off = epsg === undefined ? undefined : GEOGRAPHIC.get(epsg);
  if (off !== undefined && !location) return { kind: 'nowhere', why: NO_PLACE };
  const isOnEarth = share(positions, isOnGrid) >= MOST || share(positions, (at) => isOnGrid(swapped(at))) >= MOST;
  if (location && isOnEarth && (epsg === undefined || off !== undefined)) {
    const centre = { lon: location.longitude, lat: location.latitude };
    const isNear = (at: LonLat) => roughDistance(at, centre) <= NEAR_THE_SITE;
    const note = off ? `Read as WGS 84, from which EPSG:${epsg} may differ by up to ${off} m.` : undefined;
    const reading = { as: 'longitude and latitude' } as const;
    if (share(positions, isNear) > 0.5) return { kind: 'known', reading, turned: false, ...(note && { note }) };
    if (share(positions, (at) => isNear(swapped(at))) > 0.5)
      return { kind: 'known', reading, turned: true, ...(note && { note }) };
  }
  return open(positions, epsg, isOnEarth, site);
}

const NO_PLACE =
  'This file is in longitude and latitude, and the board does not say where on Earth it lies: export the file in the coordinates of the survey, in metres or feet.';

function known(note: string): KnownCoordinates {
  return { kind: 'known', reading: { as: 'survey grid', unit: 'metres' }, turned: false, note };
}

function open(
  positions: readonly LonLat[],
  epsg: number | undefined,
  isOnEarth: boolean,
  site: Site,
): KnownCoordinates {
  const isSmall = share(positions, ({ lon, lat }) => Math.max(Math.abs(lon), Math.abs(lat)) <= NEAR_AN_ORIGIN) > 0.5;
  const metric = isSmall ? (['site plane', 'survey grid'] as const) : (['survey grid', 'site plane'] as const);
  const readings = isOnEarth && site.location ? [...metric, 'longitude and latitude' as const] : metric;
  const named = epsg === undefined ? 'does not say what its coordinates count' : `names the system EPSG:${epsg}`;
  const range = isOnEarth && epsg === undefined ? `, ${earthly(site)}` : '';
  return { kind: 'open', readings, why: `This file ${named}${range}: choose how they are meant, and in which unit.` };
}

function earthly(site: Site): string {
  return site.location
    ? 'and as longitude and latitude it would lie more than 50 km from the site'
    : 'and if they are longitude and latitude it cannot be placed, since the board does not say where on Earth it lies';
}

function allPositions(elements: readonly Element[]): readonly LonLat[] {
  return elements.flatMap(({ shape }) => {
    if (shape.type === 'point') return [shape.at];
    return shape.type === 'line' ? shape.pieces.flat() : shape.parts.flat(2);
  });
}

function share(positions: readonly LonLat[], holds: (position: LonLat) => boolean): number {
  return positions.length === 0 ? 0 : positions.filter(holds).length / positions.length;
}
