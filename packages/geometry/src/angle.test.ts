import type { SitePoint } from '@loopwright/model';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { angleBetween, bearingOf, roundedCosine, roundedSine } from './angle.ts';
import { sectorContains } from './sector.ts';

const RUNS = { numRuns: 500, seed: 20_260_505 };

// Truth: exact values of the cosine (half, root of a half, root of three quarters).
test.each([
  { degrees: 0, cosine: 1 },
  { degrees: 30, cosine: Math.sqrt(3) / 2 },
  { degrees: 45, cosine: Math.SQRT1_2 },
  { degrees: 60, cosine: 0.5 },
  { degrees: 90, cosine: 0 },
  { degrees: 135, cosine: -Math.SQRT1_2 },
  { degrees: 180, cosine: -1 },
  { degrees: 270, cosine: 0 },
  { degrees: -60, cosine: 0.5 },
])('the cosine of $degrees° is right to 1e-9', ({ degrees, cosine }) => {
  expect(Math.abs(roundedCosine(degrees) - cosine)).toBeLessThanOrEqual(5.1e-10);
});

test('cosine and sine agree with the engine, which knows about sixteen digits, to their own nine', () => {
  fc.assert(
    fc.property(fc.double({ min: -720, max: 720, noNaN: true }), (degrees) => {
      const radians = (degrees * Math.PI) / 180;
      expect(Math.abs(roundedCosine(degrees) - Math.cos(radians))).toBeLessThan(6e-10);
      expect(Math.abs(roundedSine(degrees) - Math.sin(radians))).toBeLessThan(6e-10);
    }),
    RUNS,
  );
});

describe('a bearing', () => {
  test.each([
    { towards: 'north', v: { x: 0, y: 2 }, degrees: 0 },
    { towards: 'north-east', v: { x: 1, y: 1 }, degrees: 45 },
    { towards: 'east', v: { x: 5, y: 0 }, degrees: 90 },
    { towards: 'south', v: { x: 0, y: -1 }, degrees: 180 },
    { towards: 'west', v: { x: -3, y: 0 }, degrees: 270 },
    { towards: 'nowhere', v: { x: 0, y: 0 }, degrees: 0 },
  ])('towards $towards is $degrees°', ({ v, degrees }) => {
    expect(Math.abs(bearingOf(v) - (degrees * Math.PI) / 180)).toBeLessThanOrEqual(5.1e-7);
  });

  test('is never a full turn, however near to north', () => {
    expect(bearingOf({ x: -1e-12, y: 1 })).toBe(0);
  });

  test.each([1e-9, 1, 1e9])('does not change with a drawing %d times as large', (scale) => {
    fc.assert(
      fc.property(fc.integer({ min: -999, max: 999 }), fc.integer({ min: -999, max: 999 }), (x, y) => {
        const whole = Math.atan2(x, y) < 0 ? Math.atan2(x, y) + 2 * Math.PI : Math.atan2(x, y);
        expect(Math.abs(bearingOf({ x: x * scale, y: y * scale }) - whole)).toBeLessThanOrEqual(1.1e-6);
      }),
      RUNS,
    );
  });
});

test('the angle between two directions is the same either way round', () => {
  expect(angleBetween({ x: 1, y: 0 }, { x: 0, y: 1 })).toBe(Math.round((Math.PI / 2) * 1e6) / 1e6);
  expect(angleBetween({ x: 1, y: 0 }, { x: -1, y: 0 })).toBe(Math.round(Math.PI * 1e6) / 1e6);
  fc.assert(
    fc.property(fc.integer(), fc.integer(), fc.integer(), fc.integer(), (ax, ay, bx, by) => {
      const a: SitePoint = { x: ax, y: ay };
      const b: SitePoint = { x: bx, y: by };
      expect(angleBetween(a, b)).toBe(angleBetween(b, a));
    }),
    RUNS,
  );
});

test('a sector of 15° holds what lies within 15° of its line and within its reach', () => {
  const sector = { from: { x: 0, y: 0 }, towards: { x: 0, y: 1 }, reach: 250, cosine: roundedCosine(15) };
  // 250 · tan 15° = 66.99: half-widths of a cone at 250.
  expect(sectorContains(sector, { x: 53.5, y: 200 })).toBe(true);
  expect(sectorContains(sector, { x: 53.7, y: 200 })).toBe(false);
  expect(sectorContains(sector, { x: 0, y: 250 })).toBe(true);
  expect(sectorContains(sector, { x: 0, y: 250.1 })).toBe(false);
  expect(sectorContains(sector, { x: 0, y: -1 })).toBe(false);
});
