import { distanceBetween } from '@loopwright/geometry';
import fc from 'fast-check';
import geodesic from 'geographiclib-geodesic';
import { expect, test } from 'vitest';
import { lonLatOf, sitePlaneAt } from './site-plane.ts';
import { utmZoneOf, utmZoneOfEpsg } from './utm-zone.ts';

const { WGS84 } = geodesic.Geodesic;
const degrees = (d: number, m: number, s: number) => d + m / 60 + s / 3600;

// Truth: GDA Technical Manual, Flinders Peak in zone 55; its ellipsoid GRS80 is WGS 84 to 0.1 mm.
const FLINDERS = { lon: degrees(144, 25, 29.5244), lat: -degrees(37, 57, 3.7203) };

test('Flinders Peak lies where the GDA manual puts it, with its scale and its grid convergence', () => {
  const { location, north } = sitePlaneAt(FLINDERS);
  expect(location.epsg).toBe(32755);
  expect(Math.abs(location.origin.easting - 273_741.297)).toBeLessThan(0.001);
  expect(Math.abs(location.origin.northing - 5_796_489.777)).toBeLessThan(0.001);
  expect(Math.abs(location.scaleFactor - 1.00023056)).toBeLessThan(1e-8);
  // Grid bearing = azimuth + convergence in the manual's sign, so true north has the grid bearing −1°35′03.65″.
  const published = (-degrees(1, 35, 3.65) * Math.PI) / 180;
  expect(Math.abs(north - published)).toBeLessThan(1e-6);
});

// Truth: UTM 32, 56° N 12° E, from the PROJ test file builtins.gie.
test('a place far inside zone 32 has the coordinates of the PROJ tests', () => {
  // 12° E is the zone's eastern edge, where zone 33 begins: the last step west of it stays in 32.
  expect(utmZoneOf({ lon: 12, lat: 56 }).epsg).toBe(32633);
  const { location } = sitePlaneAt({ lon: 12 - 1e-9, lat: 56 });
  expect(Math.abs(location.origin.easting - 687_071.43910944)).toBeLessThan(0.001);
  expect(Math.abs(location.origin.northing - 6_210_141.32674801)).toBeLessThan(0.001);
});

// Truth: GeographicLib, Karney's geodesics, as npm geographiclib-geodesic 2.2.0. Tolerance: 1 in 100,000, and 1.5 mm
// for the rounding of both ends to the millimetre. 'edge' places lie 3° from their zone's middle, where scale changes fastest.
const PLACES = [
  { name: 'the equator at a zone edge', lon: 5.999, lat: 0.001 },
  { name: 'the equator in mid-zone', lon: 3, lat: 0 },
  { name: 'Pebble Beach latitude at an edge', lon: -120.01, lat: 36.5674 },
  { name: 'south of the equator', lon: 145.0, lat: -37.9 },
  { name: 'mid latitude at an edge', lon: -0.001, lat: 51.3 },
  { name: 'St Andrews latitude', lon: -2.82, lat: 56.35 },
  { name: 'northern Norway', lon: 25.7, lat: 71.0 },
  { name: 'Tierra del Fuego', lon: -68.3, lat: -54.8 },
];

test.each(PLACES)('lengths at $name are ground lengths within 1 in 100,000', ({ lon, lat }) => {
  const plane = sitePlaneAt({ lon, lat });
  fc.assert(
    fc.property(
      fc.double({ min: 0, max: 900, noNaN: true }),
      fc.double({ min: 0, max: 360, noNaN: true }),
      fc.double({ min: 100, max: 600, noNaN: true }),
      fc.double({ min: 0, max: 360, noNaN: true }),
      (off, towards, length, azimuth) => {
        const tee = WGS84.Direct(lat, lon, towards, off);
        const green = WGS84.Direct(tee.lat2 ?? 0, tee.lon2 ?? 0, azimuth, length);
        const from = plane.toSite({ lon: tee.lon2 ?? 0, lat: tee.lat2 ?? 0 });
        const to = plane.toSite({ lon: green.lon2 ?? 0, lat: green.lat2 ?? 0 });
        expect(Math.abs(distanceBetween(from, to) - length)).toBeLessThan(length * 1e-5 + 0.0015);
      },
    ),
    { numRuns: 200 },
  );
});

test.each(PLACES)('true north at $name is where the geodesic north is', ({ lon, lat }) => {
  const plane = sitePlaneAt({ lon, lat });
  const north = WGS84.Direct(lat, lon, 0, 1000);
  const { x, y } = plane.toSite({ lon: north.lon2 ?? 0, lat: north.lat2 ?? 0 });
  // 1 km of a meridian bends on the grid by about 5e-5 rad at most here.
  expect(Math.abs(Math.atan2(x, y) - plane.north)).toBeLessThan(1e-4);
});

test('a point of the plane goes back to its longitude and latitude', () => {
  const plane = sitePlaneAt({ lon: -20.5, lat: 51.3 });
  const back = lonLatOf(plane.location);
  const at = plane.toLonLat({ x: 400, y: -300 });
  expect(back?.({ x: 400, y: -300 })).toEqual(at);
  expect(distanceBetween(plane.toSite(at), { x: 400, y: -300 })).toBeLessThan(0.001);
});

test('a site in another reference system has no way back here', () => {
  expect(lonLatOf({ ...sitePlaneAt({ lon: 3, lat: 50 }).location, epsg: 27700 })).toBeUndefined();
  expect(utmZoneOfEpsg(32661)).toBeUndefined();
  expect(utmZoneOfEpsg(32701)).toMatchObject({ number: 1, isSouth: true });
});

test('zones beyond the grid are the caller mistake they are', () => {
  expect(() => utmZoneOf({ lon: 0, lat: 85 })).toThrow(RangeError);
  expect(utmZoneOf({ lon: 180, lat: 0 }).number).toBe(60);
});
