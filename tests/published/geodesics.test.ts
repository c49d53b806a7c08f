// Lengths and azimuths on the ellipsoid, as others have published them. They guard the choice of library: what a hole
// measures on the ground is told by geographiclib-geodesic (C. Karney, "Algorithms for geodesics", J. Geodesy 87, 2013).
import geodesic from 'geographiclib-geodesic';
import { expect, test } from 'vitest';

const { Geodesic } = geodesic;
const { WGS84 } = Geodesic;
/** Source: GRS 80, H. Moritz, "Geodetic Reference System 1980" (Bulletin géodésique 54): a and 1/f. */
const GRS80 = new Geodesic.Geodesic(6_378_137, 1 / 298.257222101);

function degrees(sign: 1 | -1, whole: number, minutes: number, seconds: number): number {
  return sign * (whole + minutes / 60 + seconds / 3600);
}

type Position = readonly [latitude: number, longitude: number];
const FLINDERS_PEAK: Position = [degrees(-1, 37, 57, 3.7203), degrees(1, 144, 25, 29.5244)];
const BUNINYONG: Position = [degrees(-1, 37, 39, 10.1561), degrees(1, 143, 55, 35.3839)];

// Tolerance: half of the last digit printed by the source.
const LINES: readonly {
  readonly name: string;
  readonly source: string;
  readonly from: Position;
  readonly to: Position;
  readonly ellipsoid?: typeof WGS84;
  readonly metres: number;
  readonly within: number;
  readonly azimuths?: readonly [number, number];
}[] = [
  {
    name: 'JFK to LHR',
    source: 'GeographicLib documentation, GeodSolve',
    from: [40.6, -73.8],
    to: [51.6, -0.5],
    metres: 5_551_759.400319,
    within: 0.5e-6,
    azimuths: [51.198882846, 107.821776736],
  },
  {
    name: 'Wellington to Salamanca',
    source: 'README of geographiclib-js',
    from: [-41.32, 174.81],
    to: [40.96, -5.5],
    metres: 19_959_679.267,
    within: 0.0005,
  },
  {
    name: "Land's End to John o'Groats",
    source: 'test suites of published Vincenty implementations',
    from: [50.06632, -5.71475],
    to: [58.64402, -3.07009],
    metres: 969_954.166314,
    within: 0.5e-6,
    azimuths: [9.141877489, 11.297220414],
  },
  {
    name: 'Flinders Peak to Buninyong',
    source: 'GDA Technical Manual, worked example on GRS 80',
    from: FLINDERS_PEAK,
    to: BUNINYONG,
    ellipsoid: GRS80,
    metres: 54_972.271139,
    within: 0.5e-6,
    azimuths: [degrees(1, 306, 52, 5.37), degrees(1, 127, 10, 25.07) + 180],
  },
  {
    name: 'a nearly antipodal line, where iteration used to fail',
    source: 'test suites of published Vincenty implementations (19,936,288.579)',
    from: [0, 0],
    to: [0.5, 179.5],
    metres: 19_936_288.579,
    within: 0.0005,
  },
];

/** The second tolerance of an azimuth: half a hundredth of a second of arc, the coarsest of the sources. */
const AZIMUTH_WITHIN = 0.005 / 3600;

function apart(azimuth: number | undefined, published: number): number {
  const turned = Math.abs((azimuth ?? Number.NaN) - published) % 360;
  return Math.min(turned, 360 - turned);
}

test.each(LINES)(
  '$name is as long as published ($source)',
  ({ from, to, ellipsoid = WGS84, metres, within, azimuths }) => {
    const line = ellipsoid.Inverse(...from, ...to);
    expect(Math.abs((line.s12 ?? Number.NaN) - metres)).toBeLessThanOrEqual(within);
    if (!azimuths) return;
    expect(apart(line.azi1, azimuths[0])).toBeLessThanOrEqual(AZIMUTH_WITHIN);
    expect(apart(line.azi2, azimuths[1])).toBeLessThanOrEqual(AZIMUTH_WITHIN);
  },
);

test('the direct problem reaches what the inverse problem left from', () => {
  for (const { from, to, ellipsoid = WGS84 } of LINES) {
    const { s12 = 0, azi1 = 0 } = ellipsoid.Inverse(...from, ...to);
    const end = ellipsoid.Direct(...from, azi1, s12);
    expect(apart(end.lat2, to[0])).toBeLessThan(1e-9);
    expect(apart(end.lon2, to[1])).toBeLessThan(1e-9);
  }
});

// Source: the polygon example of the geographiclib-js tutorial.
test('the outline of Antarctica has the published perimeter and area', () => {
  const outline: readonly Position[] = [
    [-63.1, -58],
    [-72.9, -74],
    [-71.9, -102],
    [-74.9, -102],
    [-74.3, -131],
    [-77.5, -163],
    [-77.4, 163],
    [-71.7, 172],
    [-65.9, 140],
    [-65.7, 113],
    [-66.6, 88],
    [-66.9, 59],
    [-69.8, 25],
    [-70, -4],
    [-71, -14],
    [-77.3, -33],
    [-77.9, -46],
    [-74.7, -61],
  ];
  const polygon = WGS84.Polygon(false);
  for (const [latitude, longitude] of outline) polygon.AddPoint(latitude, longitude);
  const { perimeter, area } = polygon.Compute(false, true);
  expect(Math.abs(perimeter - 16_831_067.893)).toBeLessThanOrEqual(0.0005);
  expect(Math.abs((area ?? Number.NaN) - 13_662_703_680_020.1)).toBeLessThanOrEqual(0.05);
});

// Computed once with the C++ library's algorithm, not published: they hold the library still at the size of a hole.
const AT_THE_SIZE_OF_A_HOLE: readonly {
  readonly from: Position;
  readonly to: Position;
  readonly metres: number;
  readonly azimuth: number;
}[] = [
  { from: [56.35, -2.82], to: [56.35, -2.81], metres: 618.2773, azimuth: 89.995838 },
  { from: [36.5674, -121.9487], to: [36.57, -121.945], metres: 439.2423, azimuth: 48.938024 },
  { from: [0, 0], to: [0.001, 0.001], metres: 156.9035, azimuth: 45.192423 },
];

test.each(AT_THE_SIZE_OF_A_HOLE)('$metres m from $from', ({ from, to, metres, azimuth }) => {
  const line = WGS84.Inverse(...from, ...to);
  expect(Math.abs((line.s12 ?? Number.NaN) - metres)).toBeLessThanOrEqual(0.00005);
  expect(apart(line.azi1, azimuth)).toBeLessThanOrEqual(0.0000005);
});

test('400 yd north-east of 40° N 100° W ends where it was computed to end', () => {
  const end = WGS84.Direct(40, -100, 45, 365.76);
  expect(apart(end.lat2, 40.002329246)).toBeLessThanOrEqual(0.5e-9);
  expect(apart(end.lon2, -99.996971209)).toBeLessThanOrEqual(0.5e-9);
});

// Metres in one degree about a latitude. Source: closed formulae for the radii of curvature on WGS 84; sums done apart.
test.each([
  { latitude: 0, north: 110_574.276, east: 111_319.491 },
  { latitude: 40, north: 111_034.633, east: 85_393.857 },
  { latitude: 50, north: 111_229.064, east: 71_695.754 },
  { latitude: 60, north: 111_412.287, east: 55_800.002 },
])('a degree of latitude and of longitude at $latitude°', ({ latitude, north, east }) => {
  const meridian = (WGS84.Inverse(latitude - 5e-4, 0, latitude + 5e-4, 0).s12 ?? Number.NaN) * 1e3;
  const parallel = (WGS84.Inverse(latitude, 0, latitude, 1e-4).s12 ?? Number.NaN) * 1e4;
  expect(Math.abs(meridian - north)).toBeLessThan(0.01);
  expect(Math.abs(parallel - east)).toBeLessThan(0.01);
});
