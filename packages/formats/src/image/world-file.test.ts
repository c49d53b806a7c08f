// Definition: the Esri world file, as documented by the GDAL project (gdal.org, "WLD -- ESRI World File"): pixel X size,
// rotation about Y, rotation about X, negative pixel Y size, X and Y of the centre of the upper left pixel. Both examples
// are published: the first there, the second in the online help of ArcView ("World file contents").
import type { SitePoint } from '@loopwright/model';
import { expect, test } from 'vitest';
import { METRES_PER_MAP_UNIT } from '../survey/map-units.ts';
import { readWorldFile, type WorldFile } from './world-file.ts';
import { placementOf } from './world-file-placement.ts';

const GDAL = '60.0000000000\n0.0000000000\n0.0000000000\n-60.0000000000\n440750.0000000000\n3751290.0000000000\n';
const ARCVIEW =
  '20.17541308822119\r\n0.00000000000000\r\n0.00000000000000\r\n-20.17541308822119\r\n424178.11472601280548\r\n4313415.90726399607956\r\n';

const terms = (text: string): WorldFile => {
  const read = readWorldFile(text);
  if (read.kind !== 'world file') throw new Error(read.why);
  return read.terms;
};
type Placed = Extract<ReturnType<typeof placementOf>, { kind: 'placed' }>;
const placed = (...all: Parameters<typeof placementOf>): Placed => {
  const place = placementOf(...all);
  if (place.kind !== 'placed') throw new Error(place.why);
  return place;
};
/** Where a place on the image, in pixels from its upper left corner, comes to lie. */
const at = ([a, b, c, d, e, f]: Placed['placement'], column: number, row: number): SitePoint => ({
  x: a * column + b * row + c,
  y: d * column + e * row + f,
});
const SIZE = { widthPixels: 100, heightPixels: 50 };
const ZERO = { easting: 0, northing: 0 };

test('the six numbers come in the order A, D, B, E, C, F', () => {
  expect(terms(GDAL)).toEqual({ a: 60, d: 0, b: 0, e: -60, c: 440_750, f: 3_751_290 });
  expect(terms(ARCVIEW)).toMatchObject({ a: 20.175_413_088_221_19, c: 424_178.114_726_012_8 });
  expect(terms('1 2 3 -4 5 6')).toEqual({ a: 1, d: 2, b: 3, e: -4, c: 5, f: 6 });
  expect(terms('\ufeff  2.5e-1\n.0\n-0\n-.25\n+7.\n8e2')).toMatchObject({ a: 0.25, e: -0.25, c: 7, f: 800 });
});

test('the middle of the first pixel lies where the file says, its corner half a pixel out', () => {
  const { placement } = placed(terms('60\n0\n0\n-60\n440750\n251290'), SIZE, { unit: 'metres', grid: ZERO });
  expect(at(placement, 0.5, 0.5)).toEqual({ x: 440_750, y: 251_290 });
  expect(at(placement, 0, 0)).toEqual({ x: 440_720, y: 251_320 });
  // By hand: 100 × 60 m east of the corner, 50 × 60 m south of it.
  expect(at(placement, 100, 50)).toEqual({ x: 446_720, y: 248_320 });
});

test('a turned image: each pixel centre is where the two equations put it', () => {
  // A quarter turn: columns run south, rows run west. By hand for column 2, row 3:
  // x = 0·2 + (−4)·3 + 1000 = 988, y = (−4)·2 + 0·3 + 500 = 492.
  const { placement } = placed(terms('0\n-4\n-4\n0\n1000\n500'), SIZE, { unit: 'metres', grid: ZERO });
  expect(at(placement, 2.5, 3.5)).toEqual({ x: 988, y: 492 });
});

test('the board’s survey grid is taken off, and its scale taken out', () => {
  const grid = { easting: 440_000, northing: 251_000 };
  const { placement, grid: kept } = placed(terms('2\n0\n0\n-2\n440001\n251099'), SIZE, { unit: 'metres', grid });
  expect(kept).toBe(grid);
  expect(at(placement, 0, 0)).toEqual({ x: 0, y: 100 });
  const onGround = placed(terms('2\n0\n0\n-2\n440001\n251099'), SIZE, { unit: 'metres', grid, scaleFactor: 0.9996 });
  // 100 pixels of 2 m on the map are 200 ÷ 0.9996 = 200.080 m on the ground.
  expect(at(onGround.placement, 100, 0).x).toBeCloseTo(200.080_032, 6);
});

test('without a survey grid the image brings one, about its own middle', () => {
  const { placement, grid } = placed(terms(GDAL), SIZE, { unit: 'metres' });
  // Middle by hand: x = 440 720 + 3000 = 443 720, y = 3 751 320 − 1500 = 3 749 820.
  expect(grid).toEqual({ easting: 443_700, northing: 3_749_800 });
  expect(at(placement, 50, 25)).toEqual({ x: 20, y: 20 });
});

test('feet are feet: the two differ by over a metre at a northing of two million', () => {
  // NIST SP 811: one US survey foot is 1200/3937 m, 0.304 800 609 601 m to twelve places.
  expect(METRES_PER_MAP_UNIT['US survey feet']).toBeCloseTo(0.304_800_609_601, 12);
  const file = terms('1\n0\n0\n-1\n2000000.5\n1999999.5');
  const us = placed(file, SIZE, { unit: 'US survey feet', grid: ZERO });
  const international = placed(file, SIZE, { unit: 'international feet', grid: ZERO });
  // 2 000 000 ft: 609 600 m exactly, and 2 400 000 000 ÷ 3937 = 609 601.219 202 m.
  expect(at(international.placement, 0, 0).x).toBeCloseTo(609_600, 6);
  expect(at(us.placement, 0, 0).x).toBeCloseTo(609_601.219_202, 6);
});

test('an image that is turned over says so', () => {
  const read = readWorldFile('1\n0\n0\n1\n0\n0');
  expect(read).toMatchObject({ kind: 'world file', notes: [expect.stringMatching(/turns the image over/)] });
  expect(readWorldFile(GDAL)).toMatchObject({ notes: [] });
});

test.each([
  ['nothing', ' \n\n', /empty/],
  ['four numbers', '60\n0\n0\n-60\n', /ends after 4 of its six numbers/],
  ['seven numbers', '60\n0\n0\n-60\n1\n2\n3', /holds 7 numbers/],
  ['decimal commas', '0,5\n0\n0\n-0,5\n1\n2', /'0,5' is written with a comma/],
  ['words', 'A\nB', /'A' is no number/],
  ['an image', `\u0089PNG\r\n\u001a\n${'x'.repeat(400)}`, /is no number/],
  ['a huge file', '1\n'.repeat(100_000), /too long/],
  ['no area', '1\n2\n2\n4\n0\n0', /no area/],
  ['no pixel', '0\n0\n0\n0\n0\n0', /no area/],
  ['numbers beyond any map', '1\n0\n0\n-1\n1e300\n0', /beyond any map/],
  ['degrees', '0.0000089\n0\n0\n-0.0000089\n-4.25\n55.87', /look like degrees/],
  ['Infinity', 'Infinity\n0\n0\n-1\n0\n0', /is no number/],
])('%s: one sentence with what to do', (_, text, why) => {
  expect(readWorldFile(text)).toMatchObject({ kind: 'unreadable', why: expect.stringMatching(why) });
});

test('an image hundreds of kilometres from the site is not placed, and the sentence says why', () => {
  const place = placementOf(terms(GDAL), SIZE, { unit: 'metres', grid: ZERO });
  expect(place).toMatchObject({ kind: 'too far', why: expect.stringMatching(/3776 km from the site.*survey grid/) });
});
