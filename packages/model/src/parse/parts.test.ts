import fc from 'fast-check';
import { expect, test } from 'vitest';
import { isId } from '../ids.ts';
import { parseDisposition } from './disposition.ts';
import { parseFeature, parseFeatureGeometry } from './feature.ts';
import { parseGreen, parseGreenShape } from './green.ts';
import { parseHole } from './hole.ts';
import { parseCorridor, parseParChoice, parsePart, parseRelation, parseSeat, parseVerdict } from './hole-parts.ts';
import { parseNumber } from './number.ts';
import { parsePoint, parsePoints, parseRing } from './point.ts';
import { parseBase, parseBoundary, parseImageLayer, parseLocation, parseSiteMark } from './site-parts.ts';
import { parseLines, parseName, parseText } from './text.ts';

const PARSERS = [
  parsePoint,
  parseRing,
  parseGreenShape,
  parseGreen,
  parseFeature,
  parseFeatureGeometry,
  parseBase,
  parseSiteMark,
  parseImageLayer,
  parseLocation,
  parseBoundary,
  parseSeat,
  parseRelation,
  parseDisposition,
  parseParChoice,
  parseVerdict,
  parsePart,
  parseCorridor,
  parseHole,
  (value: unknown) => parsePoints(value),
  (value: unknown) => parseText(value, 20),
  (value: unknown) => parseNumber(value, 0, 1),
];

test('no part throws on any value, and none reads rubbish twice in two ways', () => {
  fc.assert(
    fc.property(fc.anything(), (value) => {
      for (const parse of PARSERS) {
        const parsed = parse(value);
        if (parsed !== undefined) expect(parse(parsed)).toEqual(parsed);
      }
    }),
    { numRuns: 500 },
  );
});

test('a place needs two finite coordinates within 1,000 km, and is kept to the millimetre', () => {
  expect(parsePoint({ x: 1.23449, y: -0.0001 })).toEqual({ x: 1.234, y: 0 });
  for (const value of [{ x: Number.NaN, y: 0 }, { x: 1e308, y: 0 }, { x: '1', y: 0 }, { x: 1 }, [1, 2], null, 'x'])
    expect(parsePoint(value)).toBeUndefined();
});

test('fields an object only inherits from a hostile prototype key do no harm', () => {
  const hostile: unknown = JSON.parse('{"__proto__": {"x": 1, "y": 1}, "constructor": {"x": 2}}');
  expect(parsePoint(hostile)).toBeUndefined();
  const hole = parseHole(JSON.parse('{"id":"h1","tees":{"__proto__":{"x":1,"y":1},"constructor":{"x":1,"y":1}}}'));
  expect(Object.keys(hole?.tees ?? { none: 1 })).toEqual([]);
  expect(isId('__proto__') || isId('constructor')).toBe(false);
});

const SQUARE = [
  { x: 0, y: 0 },
  { x: 9, y: 0 },
  { x: 9, y: 9 },
  { x: 0, y: 9 },
];

test('an outline loses its closing repeat and points in the same place, and keeps where it starts', () => {
  expect(parseRing([...SQUARE, { x: 0, y: 0 }])).toEqual(SQUARE);
  expect(parseRing([{ x: 0, y: 0.0001 }, ...SQUARE, { x: 0, y: 9 }, { x: 0, y: 0 }])).toEqual(SQUARE);
});

test('an outline with one bad point, too few or too many is no outline', () => {
  expect(parseRing([...SQUARE, { x: Number.NaN, y: 0 }])).toBeUndefined();
  expect(parseRing(SQUARE.slice(0, 2))).toBeUndefined();
  expect(parseRing(Array.from({ length: 600 }, (_, x) => ({ x, y: x % 2 })))).toBeUndefined();
  expect(parsePoints(Array.from({ length: 100_000 }, () => SQUARE[0]))).toBeUndefined();
});

test('a script in a name stays the plain characters it is; control characters do not', () => {
  expect(parseText('<script>alert(1)</script>', 80)).toBe('<script>alert(1)</script>');
  expect(parseText('Old\u0000\u001b[31m Oak\u202e\n', 80)).toBe('Old [31m Oak');
  expect(parseText('half \ud83d', 80)).toBe('half \ufffd');
  expect(parseText('⛳'.repeat(100), 3)).toBe('⛳⛳⛳');
  expect(parseText('😀'.repeat(100), 3)).toBe('😀😀😀');
  expect(parseText(12, 80)).toBeUndefined();
  expect(parseName('\u0007 ', 80)).toBeUndefined();
  expect(parseLines('one\r\n\ttwo\u0000', 80)).toBe('one\ntwo');
});

test('letters of every script stay as they are typed, and what nobody can see is no name', () => {
  for (const name of ['مزرعة قديمة', 'שדה', 'नदी', '古い池', 'ทุ่งหญ้า', 'Ðæð', '👨‍👩‍👧', 'می‌خواهم', 'བོད'])
    expect(parseName(name, 80)).toBe(name);
  for (const unseen of ['\u200b\u200b', '\u200d', '\u3164', '\u2800 \u00ad', '\u0301', '\u{e0041}', '\u202e'])
    expect(parseName(unseen, 80)).toBeUndefined();
});

test('a cut leaves no joiner hanging, and marks do not pile up on one letter', () => {
  expect(parseText('👨\u200d👩', 2)).toBe('👨');
  expect(parseText(`a${'\u0301'.repeat(60)}b`, 80)).toBe(`a${'\u0301'.repeat(8)}b`);
  expect([...(parseText('é'.repeat(10_000), 80) ?? '')]).toHaveLength(80);
});

test('a green needs a size that a green can have; a bad outline leaves the oval', () => {
  const shape = { length: 30, width: 20, bearing: 0.5 };
  expect(parseGreenShape({ ...shape, outline: [1, 2] })).toEqual(shape);
  expect(parseGreenShape({ ...shape, length: 1e308 })).toBeUndefined();
  expect(parseGreenShape({ ...shape, width: Number.NaN })).toBeUndefined();
  expect(parseGreen(shape)).toBeUndefined();
});

test('a seat names its loop and a place in the order', () => {
  expect(parseSeat({ in: 'loop', loop: 'a', key: 'a0' })).toEqual({ in: 'loop', loop: 'a', key: 'a0' });
  expect(parseSeat({ in: 'spare', key: 'a0', loop: 'a' })).toEqual({ in: 'spare', key: 'a0' });
  for (const seat of [
    { in: 'loop', key: 'a0' },
    { in: 'spare', key: 'a00' },
    { in: 'nowhere', key: 'a0' },
  ])
    expect(parseSeat(seat)).toBeUndefined();
});

test('a feature is read with the careful meaning where it does not say what it allows', () => {
  const pond = {
    id: 'f1',
    kind: 'water',
    geometry: { type: 'area', rings: [SQUARE] },
    allows: { carry: 1, walk: true },
  };
  expect(parseFeature(pond)).toEqual({
    id: 'f1',
    kind: 'water',
    geometry: { type: 'area', rings: [SQUARE] },
    allows: { carry: false, walk: true, mow: false, build: false },
    buffer: 0,
  });
  expect(parseFeature({ ...pond, kind: 'lava' })).toBeUndefined();
  expect(parseFeature({ ...pond, geometry: { type: 'line', points: SQUARE.slice(0, 1) } })).toBeUndefined();
});

test('an image that would have no area, or no true hash, is none', () => {
  const image = { id: 'i1', blob: 'a'.repeat(64), widthPixels: 10, heightPixels: 10, placement: [1, 0, 0, 0, -1, 0] };
  expect(parseImageLayer(image)?.opacity).toBe(1);
  expect(parseImageLayer({ ...image, placement: [0, 0, 0, 0, 0, 0] })).toBeUndefined();
  expect(parseImageLayer({ ...image, blob: '../../etc/passwd' })).toBeUndefined();
});

test('a disposition keeps the key of a walk between a hole and a base', () => {
  const disposition = {
    routing: 'a',
    finding: 'walk-long|h1>h2',
    kind: 'to be checked by',
    words: 'me',
    measured: 301,
  };
  expect(parseDisposition(disposition)).toEqual(disposition);
  expect(parseDisposition({ ...disposition, kind: 'accepted' })).toBeUndefined();
});
