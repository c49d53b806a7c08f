import { bearingOf } from '@loopwright/geometry';
import { pointToMillimetre, type SiteLocation, type SitePoint } from '@loopwright/model';
import proj4 from 'proj4';
import type { LonLat } from '../geojson/element.ts';
import { type UtmZone, utmZoneOf, utmZoneOfEpsg } from './utm-zone.ts';

/** The flat drawing board a site lies on: where it is on Earth, and the way there and back. */
export interface SitePlane {
  readonly location: SiteLocation;
  /** True north, radians clockwise from +y: the grid's convergence at the origin. */
  readonly north: number;
  /** To the millimetre. */
  toSite(position: LonLat): SitePoint;
  toLonLat(point: SitePoint): LonLat;
  /** Projected ÷ ground distance at a place, against that at the origin: 1 at the origin. */
  relativeScaleAt(position: LonLat): number;
}

/** WGS 84: half the longest axis (m) and the first eccentricity squared. Source: NGA.STND.0036 (2014). */
const SEMI_MAJOR = 6_378_137;
const ECCENTRICITY_SQUARED = 0.006_694_379_990_141_3;

/** Degrees of latitude each way over which north and scale are measured, about 11 m. */
const STEP = 0.0001;

/** Between longitude and latitude and the grid's easting and northing. */
interface Grid {
  forward(degrees: number[]): number[];
  inverse(metres: number[]): number[];
}

const gridOf = (zone: UtmZone): Grid =>
  proj4(`+proj=utm +zone=${zone.number}${zone.isSouth ? ' +south' : ''} +datum=WGS84 +units=m +no_defs`);

/**
 * A plane about a place: UTM metres from that place, divided by the grid's scale there, so that lengths are lengths on
 * the ground (at the ellipsoid: the file says no height).
 *
 * Lengths agree with the geodesic within 1 in 100,000 up to about 1.2 km from the origin at the very edge of a zone on
 * the equator, and several times as far elsewhere; the rest is rounding to the millimetre.
 * North is measured, not taken from a formula, so that its sign cannot be mistaken.
 */
export function sitePlaneAt(origin: LonLat): SitePlane {
  const zone = utmZoneOf(origin);
  const grid = gridOf(zone);
  const [easting, northing] = grid.forward([origin.lon, origin.lat]);
  const { scale, north } = scaleAndNorth(grid, origin);
  const location: SiteLocation = {
    latitude: origin.lat,
    longitude: origin.lon,
    epsg: zone.epsg,
    origin: { easting: easting ?? 0, northing: northing ?? 0 },
    scaleFactor: Math.round(scale * 1e9) / 1e9,
  };
  return {
    location,
    north,
    toSite: (position) => pointToMillimetre(forward(grid, location, position)),
    toLonLat: (point) => inverse(grid, location, point),
    relativeScaleAt: (position) => scaleAndNorth(grid, position).scale / scale,
  };
}

/**
 * The way from a site's plane back to longitude and latitude.
 *
 * @returns undefined when the site's EPSG code is not one of the UTM zones on WGS 84
 */
export function lonLatOf(location: SiteLocation): ((point: SitePoint) => LonLat) | undefined {
  const zone = utmZoneOfEpsg(location.epsg);
  if (!zone) return undefined;
  const grid = gridOf(zone);
  return (point) => inverse(grid, location, point);
}

/**
 * The way from longitude and latitude (WGS 84) to a site's plane, to the millimetre.
 *
 * @returns undefined when the site's EPSG code is not one of the UTM zones on WGS 84
 */
export function siteOf(location: SiteLocation): ((position: LonLat) => SitePoint) | undefined {
  const zone = utmZoneOfEpsg(location.epsg);
  if (!zone) return undefined;
  const grid = gridOf(zone);
  return (position) => pointToMillimetre(forward(grid, location, position));
}

function forward(grid: Grid, location: SiteLocation, { lon, lat }: LonLat): SitePoint {
  const [easting = 0, northing = 0] = grid.forward([lon, lat]);
  return {
    x: (easting - location.origin.easting) / location.scaleFactor,
    y: (northing - location.origin.northing) / location.scaleFactor,
  };
}

function inverse(grid: Grid, location: SiteLocation, { x, y }: SitePoint): LonLat {
  const [lon = 0, lat = 0] = grid.inverse([
    location.origin.easting + x * location.scaleFactor,
    location.origin.northing + y * location.scaleFactor,
  ]);
  return { lon, lat };
}

/** Goes a little north and measures what the grid makes of it: its length against the meridian's, and its direction. */
function scaleAndNorth(grid: Grid, { lon, lat }: LonLat): { scale: number; north: number } {
  const [fromX = 0, fromY = 0] = grid.forward([lon, lat - STEP]);
  const [toX = 0, toY = 0] = grid.forward([lon, lat + STEP]);
  const gridNorth = { x: toX - fromX, y: toY - fromY };
  const radians = Math.PI / 180;
  const sine = Math.sin(lat * radians);
  const meridianRadius = (SEMI_MAJOR * (1 - ECCENTRICITY_SQUARED)) / (1 - ECCENTRICITY_SQUARED * sine * sine) ** 1.5;
  const onGround = meridianRadius * 2 * STEP * radians;
  const bearing = bearingOf(gridNorth);
  return {
    scale: Math.sqrt(gridNorth.x ** 2 + gridNorth.y ** 2) / onGround,
    north: bearing > Math.PI ? Math.round((bearing - 2 * Math.PI) * 1e6) / 1e6 : bearing,
  };
}
