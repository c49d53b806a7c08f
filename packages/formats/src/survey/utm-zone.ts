import type { LonLat } from '../geojson/element.ts';

/** The zone of the Universal Transverse Mercator grid a site is drawn in. */
export interface UtmZone {
  readonly number: number;
  readonly isSouth: boolean;
  /** WGS 84: 32601–32660 north, 32701–32760 south of the equator. */
  readonly epsg: number;
}

/** Where the grid is defined, in degrees of latitude. Source: NGA.STND.0037 (2014), Universal Grids. */
export const UTM_LATITUDES = { least: -80, most: 84 } as const;

/**
 * The zone of a place, by longitude alone: the widened zones of south-west Norway and Svalbard are not used, since the
 * site plane corrects for scale and north wherever in its zone it lies.
 *
 * @throws RangeError outside the grid's latitudes: callers refuse those in words first
 */
export function utmZoneOf({ lon, lat }: LonLat): UtmZone {
  if (!(lat >= UTM_LATITUDES.least && lat <= UTM_LATITUDES.most && lon >= -180 && lon <= 180))
    throw new RangeError('utmZoneOf: the place must lie between 80° south and 84° north');
  const number = Math.min(60, Math.floor((lon + 180) / 6) + 1);
  const isSouth = lat < 0;
  return { number, isSouth, epsg: (isSouth ? 32700 : 32600) + number };
}

/** The zone of an EPSG code; undefined when the code is of another system. */
export function utmZoneOfEpsg(epsg: number): UtmZone | undefined {
  const number = epsg % 100;
  const hundreds = Math.floor(epsg / 100);
  if ((hundreds !== 326 && hundreds !== 327) || number < 1 || number > 60) return undefined;
  return { number, isSouth: hundreds === 327, epsg };
}
