import { UTM_LATITUDES } from '../survey/utm-zone.ts';
import { type Element, type LonLat, runsOf } from './element.ts';
import { kindOf } from './kind-of.ts';

export type AxisOrder =
  | { readonly kind: 'longitude first' }
  /** `range`: no other reading is possible; else the tagged pars say so. */
  | { readonly kind: 'latitude first'; readonly because: 'range' | 'pars' }
  | { readonly kind: 'unplaced'; readonly why: string };

/** So many more holes must have the length of their par the other way round, and this share of all, to believe it. */
const MORE_PARS = 3;
const MORE_SHARE = 0.25;

/** Lengths of a men's hole of each par (m): R&A/USGA Rules of Handicapping, Appendix F; 50 m for a shortest is ours. */
const LENGTHS: ReadonlyMap<string, readonly [number, number]> = new Map([
  ['3', [50, 240]],
  ['4', [220, 450]],
  ['5', [410, 650]],
]);

/**
 * Whether positions are written longitude first, as GeoJSON has it, or latitude first, as many people write it.
 *
 * Sure where only one reading lies on the grid. Where both do, the tagged pars decide: the wrong reading stretches the
 * course one way, and holes no longer have the length of their par.
 */
export function axisOrderOf(elements: readonly Element[]): AxisOrder {
  const holes = elements.filter(({ tags }) => kindOf(tags).is === 'hole');
  const positions = holes.flatMap(({ shape }) => runsOf(shape).flat());
  const asWritten = positions.filter(isOnGrid).length;
  const turned = positions.filter((position) => isOnGrid(swapped(position))).length;
  if (asWritten === positions.length && turned < positions.length) return { kind: 'longitude first' };
  if (asWritten < positions.length && turned > asWritten) return { kind: 'latitude first', because: 'range' };
  if (asWritten === 0 && positions.length > 0) return { kind: 'unplaced', why: whyUnplaced(positions) };
  const gain = parsThatFit(holes, swapped) - parsThatFit(holes, (position) => position);
  return gain >= MORE_PARS && gain >= holes.length * MORE_SHARE
    ? { kind: 'latitude first', because: 'pars' }
    : { kind: 'longitude first' };
}

export function swapped({ lon, lat }: LonLat): LonLat {
  return { lon: lat, lat: lon };
}

/** Whether a place lies where the UTM grid is defined. */
export function isOnGrid({ lon, lat }: LonLat): boolean {
  return Math.abs(lon) <= 180 && lat >= UTM_LATITUDES.least && lat <= UTM_LATITUDES.most;
}

/** Whether a course runs across the 180° meridian, where longitudes jump from one end to the other. */
export function isAcrossTheDateLine(elements: readonly Element[]): boolean {
  const lons = elements
    .filter(({ tags }) => kindOf(tags).is === 'hole')
    .flatMap(({ shape }) =>
      runsOf(shape)
        .flat()
        .map(({ lon }) => lon),
    );
  return lons.some((lon) => lon > 179) && lons.some((lon) => lon < -179);
}

function whyUnplaced(positions: readonly LonLat[]): string {
  const isOnEarth = positions.every(({ lon, lat }) => Math.abs(lon) <= 180 && Math.abs(lat) <= 90);
  return isOnEarth
    ? 'This course lies nearer to a pole than 80° south or 84° north, where the grid used here ends: it cannot be placed.'
    : 'The coordinates of this file are not longitude and latitude: export it again in WGS 84 (EPSG:4326).';
}

function parsThatFit(holes: readonly Element[], reading: (position: LonLat) => LonLat): number {
  return holes.filter(({ tags, shape }) => {
    const range = LENGTHS.get(tags.par ?? '');
    const length = roughLength((runsOf(shape)[0] ?? []).map(reading));
    return range !== undefined && length >= range[0] && length <= range[1];
  }).length;
}

/** Metres along a line, good to 1 %. */
function roughLength(line: readonly LonLat[]): number {
  let sum = 0;
  for (const [index, b] of line.entries()) {
    const a = line[index - 1];
    if (!a) continue;
    const shrink = Math.cos((a.lat * Math.PI) / 180);
    sum += Math.sqrt(((a.lon - b.lon) * 111_320 * shrink) ** 2 + ((a.lat - b.lat) * 110_574) ** 2);
  }
  return sum;
}
