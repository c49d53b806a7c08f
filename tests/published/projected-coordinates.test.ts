// Eastings and northings as others have published them. They guard the choice of proj4, and our own use of it.
import proj4 from 'proj4';
import { expect, test } from 'vitest';

function degrees(sign: 1 | -1, whole: number, minutes: number, seconds: number): number {
  return sign * (whole + minutes / 60 + seconds / 3600);
}

const FLINDERS_PEAK = { longitude: degrees(1, 144, 25, 29.5244), latitude: degrees(-1, 37, 57, 3.7203) };
const BUNINYONG = { longitude: degrees(1, 143, 55, 35.3839), latitude: degrees(-1, 37, 39, 10.1561) };

const utm = (zone: number, ellipsoid: string, south = '') =>
  `+proj=utm +zone=${zone}${south} +ellps=${ellipsoid} +no_defs`;

const CASES = [
  {
    name: 'the worked example of the British National Grid',
    source: 'Ordnance Survey, "A guide to coordinate systems in Great Britain"',
    grid: '+proj=tmerc +lat_0=49 +lon_0=-2 +k=0.9996012717 +x_0=400000 +y_0=-100000 +ellps=airy +no_defs',
    longitude: degrees(1, 1, 43, 4.5177),
    latitude: degrees(1, 52, 39, 27.2531),
    easting: 651_409.903,
    northing: 313_177.27,
    within: 0.0006,
  },
  {
    name: 'Texas South Central, in US survey feet',
    source: 'IOGP Guidance Note 7-2, Lambert conic conformal (two parallels)',
    grid: `+proj=lcc +lat_1=${28 + 23 / 60} +lat_2=${30 + 17 / 60} +lat_0=${27 + 50 / 60} +lon_0=-99 +x_0=609601.2192024384 +y_0=0 +ellps=clrk66 +units=us-ft +no_defs`,
    longitude: -96,
    latitude: 28.5,
    easting: 2_963_503.91,
    northing: 254_759.8,
    within: 0.006,
  },
  {
    name: 'zone 18 on the ellipsoid of Clarke',
    source: 'J. Snyder, USGS Professional Paper 1395, quoted from memory, its arithmetic confirmed',
    grid: utm(18, 'clrk66'),
    longitude: -73.5,
    latitude: 40.5,
    easting: 627_106.5,
    northing: 4_484_124.4,
    within: 0.05,
  },
  {
    name: 'the eastern edge of zone 32',
    source: "PROJ's own test file builtins.gie",
    grid: utm(32, 'GRS80'),
    longitude: 12,
    latitude: 56,
    easting: 687_071.43910944,
    northing: 6_210_141.32674801,
    within: 0.000001,
  },
  {
    name: 'Flinders Peak in zone 55 south',
    source: 'GDA Technical Manual',
    grid: utm(55, 'GRS80', ' +south'),
    ...FLINDERS_PEAK,
    easting: 273_741.297,
    northing: 5_796_489.777,
    within: 0.0006,
  },
  {
    name: 'Buninyong in zone 54 south',
    source: 'GDA Technical Manual',
    grid: utm(54, 'GRS80', ' +south'),
    ...BUNINYONG,
    easting: 758_173.797,
    northing: 5_828_674.34,
    within: 0.0006,
  },
  {
    name: 'Buninyong in zone 55 south',
    source: 'computed with the Krüger series',
    grid: utm(55, 'GRS80', ' +south'),
    ...BUNINYONG,
    easting: 228_854.05,
    northing: 5_828_259.04,
    within: 0.006,
  },
];

test.each(CASES)('$name ($source)', ({ grid, longitude, latitude, easting, northing, within }) => {
  const [x, y] = proj4(grid).forward([longitude, latitude]);
  expect(Math.abs((x ?? Number.NaN) - easting)).toBeLessThanOrEqual(within);
  expect(Math.abs((y ?? Number.NaN) - northing)).toBeLessThanOrEqual(within);
});

test.each(CASES)('$name, and back', ({ grid, longitude, latitude }) => {
  const there = proj4(grid);
  const [lon, lat] = there.inverse(there.forward([longitude, latitude]));
  expect(Math.abs((lon ?? Number.NaN) - longitude)).toBeLessThan(1e-9);
  expect(Math.abs((lat ?? Number.NaN) - latitude)).toBeLessThan(1e-9);
});
