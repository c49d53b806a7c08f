// Grid convergence and point scale: what turns grid coordinates into ground lengths and true north.
// Source: GDA Technical Manual, worked example Flinders Peak to Buninyong, zones 54 and 55 (GRS 80).
import geodesic from 'geographiclib-geodesic';
import proj4 from 'proj4';
import { expect, test } from 'vitest';

const GRS80 = new geodesic.Geodesic.Geodesic(6_378_137, 1 / 298.257222101);
const RADIANS = Math.PI / 180;

function degrees(whole: number, minutes: number, seconds: number): number {
  return whole + minutes / 60 + seconds / 3600;
}

interface Position {
  readonly latitude: number;
  readonly longitude: number;
}
const FLINDERS_PEAK: Position = { latitude: -degrees(37, 57, 3.7203), longitude: degrees(144, 25, 29.5244) };
const BUNINYONG: Position = { latitude: -degrees(37, 39, 10.1561), longitude: degrees(143, 55, 35.3839) };

const zone = (number: number) => proj4(`+proj=utm +zone=${number} +south +ellps=GRS80 +no_defs`);

function onGrid(number: number, { latitude, longitude }: Position) {
  const [x = Number.NaN, y = Number.NaN] = zone(number).forward([longitude, latitude]);
  return { x, y };
}

/** Measured, not taken from a formula: where a short step due north ends on the grid, and how long it is there. */
function measuredAt(number: number, place: Position) {
  const step = 10;
  const end = GRS80.Direct(place.latitude, place.longitude, 0, step);
  const start = GRS80.Direct(place.latitude, place.longitude, 180, step);
  const to = onGrid(number, { latitude: end.lat2 ?? Number.NaN, longitude: end.lon2 ?? Number.NaN });
  const from = onGrid(number, { latitude: start.lat2 ?? Number.NaN, longitude: start.lon2 ?? Number.NaN });
  return {
    // The manual's sign: grid bearing = azimuth + convergence, so due north (azimuth 0) shows it.
    convergence: Math.atan2(to.x - from.x, to.y - from.y) / RADIANS,
    scale: Math.hypot(to.x - from.x, to.y - from.y) / (2 * step),
  };
}

// Tolerance: the last digit printed, a hundredth of a second of arc and 1 in 10^8.
test.each([
  { name: 'Flinders Peak', place: FLINDERS_PEAK, number: 55, convergence: -degrees(1, 35, 3.65), scale: 1.00023056 },
  { name: 'Buninyong, computed', place: BUNINYONG, number: 55, convergence: -degrees(1, 52, 43.22), scale: 1.00050567 },
  { name: 'Buninyong', place: BUNINYONG, number: 54, convergence: degrees(1, 47, 19.36), scale: 1.00042107 },
])('$name in zone $number', ({ place, number, convergence, scale }) => {
  const measured = measuredAt(number, place);
  expect(Math.abs(measured.convergence - convergence)).toBeLessThanOrEqual(0.01 / 3600);
  expect(Math.abs(measured.scale - scale)).toBeLessThanOrEqual(1e-8);
});

test('the line between them: azimuth, convergence, arc to chord and line scale add up', () => {
  const from = onGrid(55, FLINDERS_PEAK);
  const to = onGrid(55, BUNINYONG);
  const plane = (Math.atan2(to.x - from.x, to.y - from.y) / RADIANS + 360) % 360;
  expect(Math.abs(plane - degrees(305, 17, 21.18))).toBeLessThanOrEqual(0.01 / 3600);
  const azimuth = degrees(306, 52, 5.37);
  const gridBearing = azimuth + measuredAt(55, FLINDERS_PEAK).convergence;
  expect(Math.abs(gridBearing - degrees(305, 17, 1.72))).toBeLessThanOrEqual(0.015 / 3600);
  expect(Math.abs((plane - gridBearing) * 3600 - 19.47)).toBeLessThanOrEqual(0.02);
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  expect(Math.abs(length - 54_992.279)).toBeLessThanOrEqual(0.001);
  expect(Math.abs(length / 54_972.271 - 1.00036397)).toBeLessThanOrEqual(1e-8);
});

test('to the first order, convergence is the difference of longitude times the sine of latitude', () => {
  const firstOrder = (FLINDERS_PEAK.longitude - 147) * Math.sin(FLINDERS_PEAK.latitude * RADIANS);
  expect(Math.abs(firstOrder - 1.5837)).toBeLessThanOrEqual(0.00005);
  expect(Math.abs(firstOrder + measuredAt(55, FLINDERS_PEAK).convergence)).toBeLessThan(0.001);
});

// Sums done apart, at 40° N 100° W in zone 14, 1,600 m up: why a card must not be read off raw grid coordinates.
test('a 400 yd hole shows as 399.775 yd on the grid at 1,600 m', () => {
  const [x = Number.NaN, y = Number.NaN] = proj4('+proj=utm +zone=14 +datum=WGS84 +no_defs').forward([-100, 40]);
  expect(Math.abs(x - 414_639.538)).toBeLessThanOrEqual(0.0005);
  expect(Math.abs(y - 4_428_236.065)).toBeLessThanOrEqual(0.0005);
  const combined = 0.9996897 * (6_371_000 / 6_372_600);
  expect(Math.abs(combined - 0.9994387)).toBeLessThanOrEqual(5e-9);
  expect(Math.abs(400 * combined - 399.775)).toBeLessThanOrEqual(0.0005);
});
