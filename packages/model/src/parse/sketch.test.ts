import fc from 'fast-check';
import { expect, test } from 'vitest';
import { canonicalJson } from '../canonical-json.ts';
import { parsePlan } from './plan.ts';
import { parseBase, parseGrid, parseImageLayer, parseLengthUnit } from './site-parts.ts';
import { parseSketch, parseSketchShape } from './sketch.ts';

const LINE = [
  { x: 0, y: 0 },
  { x: 3, y: 4 },
];
const sketch = (shape: unknown, more: object = {}) => ({ id: 'k1', shape, by: 'Ann', ink: 3, kept: false, ...more });

test.each([
  { kind: 'stroke', points: LINE },
  { kind: 'measured line', points: LINE },
  { kind: 'measured area', ring: [...LINE, { x: 9, y: 0 }] },
  { kind: 'ring', radius: 30, about: { at: { x: 1, y: 2 } } },
  { kind: 'ring', radius: 30, about: { routing: 'a', hole: 'h1', part: 'green' } },
  { kind: 'rod', points: [...LINE, { x: 9, y: 0 }] },
])('a $kind comes back as it went in', (shape) => {
  expect(parseSketch(sketch(shape, { note: 'see\nthis' }))).toEqual(sketch(shape, { note: 'see\nthis' }));
});

test.each([
  [{ kind: 'stroke', points: LINE.slice(0, 1) }],
  [{ kind: 'stroke', points: Array.from({ length: 501 }, (_, x) => ({ x, y: 0 })) }],
  [
    {
      kind: 'rod',
      points: [
        { x: 0, y: 0 },
        { x: Number.NaN, y: 0 },
      ],
    },
  ],
  [{ kind: 'measured area', ring: LINE }],
  [{ kind: 'ring', radius: 0, about: { at: { x: 1, y: 2 } } }],
  [{ kind: 'ring', radius: -30, about: { at: { x: 1, y: 2 } } }],
  [{ kind: 'ring', radius: 1e9, about: { at: { x: 1, y: 2 } } }],
  [{ kind: 'ring', radius: 30, about: { routing: 'a', hole: 'h1', part: 'moon' } }],
  [{ kind: 'scribble', points: LINE }],
  [null],
])('%j is nothing that can be drawn', (shape) => {
  expect(parseSketchShape(shape)).toBeUndefined();
});

test('whoever drew it is kept as far as it can be read, and an ink that is none is the first', () => {
  const stroke = { kind: 'stroke', points: LINE };
  expect(parseSketch(sketch(stroke, { by: '', ink: 8, kept: 'yes' }))).toEqual(
    sketch(stroke, { by: 'somebody', ink: 0 }),
  );
  expect(parseSketch(sketch(stroke, { ink: 2.5 }))?.ink).toBe(0);
});

test('units, grid, note of a base and name of an image come back, and rubbish in them costs only them', () => {
  expect(parseLengthUnit('yards')).toBe('yards');
  expect(parseLengthUnit('furlongs')).toBeUndefined();
  expect(parseGrid({ easting: 412_345.5, northing: 98_765 })).toEqual({ easting: 412_345.5, northing: 98_765 });
  expect(parseGrid({ easting: 1 })).toBeUndefined();
  const base = { id: 'b1', name: 'House', apron: { x: 0, y: 0 }, footprints: [], note: 'to be moved' };
  expect(parseBase(base)).toEqual(base);
  const image = {
    id: 'i1',
    blob: 'a'.repeat(64),
    widthPixels: 10,
    heightPixels: 10,
    placement: [1, 0, 0, 0, -1, 0],
    opacity: 0.5,
    name: 'aerial.png',
    scaledBy: 'guess',
  };
  expect(parseImageLayer(image)).toEqual(image);
  const { scaledBy: _, ...unscaled } = image;
  expect(parseImageLayer({ ...image, scaledBy: 'eye' })).toEqual(unscaled);
});

const board = (site: object) => ({
  loopwright: 1,
  site: { name: 'Made-up Moor', north: 0, bases: [], marks: [], features: [], images: [], ...site },
  teeSets: [{ id: 'back', name: 'Back', player: 'scratch man' }],
  routings: [{ id: 'a', name: 'A', locked: false, loops: [], rounds: [], holes: [], spare: [] }],
  settings: {},
  dispositions: [],
});

test('a site with sketches, units and grid reads back equal; one without says nothing of them', () => {
  const stroke = sketch({ kind: 'stroke', points: LINE });
  const with_ = board({ units: 'yards', grid: { easting: 1, northing: 2 }, sketches: [stroke] });
  const parsed = parsePlan(with_);
  expect(parsed).toMatchObject({ kind: 'plan', notes: [] });
  expect(parsed.kind === 'plan' && canonicalJson(parsed.plan)).toBe(canonicalJson(with_));
  const bare = parsePlan(board({ sketches: [] }));
  expect(bare.kind === 'plan' && canonicalJson(bare.plan)).toBe(canonicalJson(board({})));
});

test('what cannot be read of the new fields is named in a note', () => {
  const parsed = parsePlan(board({ units: 'ells', grid: 7, sketches: [sketch({ kind: 'stroke', points: [] }), 7] }));
  expect(parsed.kind === 'plan' && parsed.notes).toEqual([
    'Site: units could not be read as written.',
    'Site: grid could not be read as written.',
    "Sketch 'k1' could not be read and was left out.",
    'Sketch number 2 of the list could not be read and was left out.',
  ]);
  const strokes = Array.from({ length: 1001 }, (_, index) => ({
    ...sketch({ kind: 'stroke', points: LINE }),
    id: `k${index}`,
  }));
  const many = parsePlan(board({ sketches: strokes }));
  expect(many.kind === 'plan' && many.notes).toEqual(['Only the first 1000 of 1001 sketches were taken in.']);
});

test('no value makes a sketch reader throw, and what it reads it reads again', () => {
  fc.assert(
    fc.property(fc.anything(), (value) => {
      for (const parse of [parseSketch, parseSketchShape, parseGrid, parseLengthUnit]) {
        const parsed = parse(value);
        if (parsed !== undefined) expect(parse(parsed)).toEqual(parsed);
      }
      const drawn = parseSketch(sketch({ kind: 'stroke', points: LINE }, { note: value, by: value, kept: value }));
      expect(parseSketch(drawn)).toEqual(drawn);
    }),
  );
});
