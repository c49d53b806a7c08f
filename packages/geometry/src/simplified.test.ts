import type { SitePoint } from '@loopwright/model';
import { lineString, simplify } from '@turf/turf';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { closestOnPolyline } from './polyline.ts';
import { simplified, simplifiedTo } from './simplified.ts';

/** To the millimetre, as points are written. */
const coordinate = fc.integer({ min: -500_000, max: 500_000 }).map((mm) => mm / 1000);
const line = fc.array(fc.record({ x: coordinate, y: coordinate }), { minLength: 2, maxLength: 60 });
const RUNS = { numRuns: 200, seed: 20_261_125 };

test('a line loses the points that lie on the straight between their neighbours, and keeps its corners', () => {
  const drawn: readonly SitePoint[] = [
    { x: 0, y: 0 },
    { x: 5, y: 0 },
    { x: 10, y: 0 },
    { x: 10, y: 4 },
    { x: 10, y: 10 },
  ];
  expect(simplified(drawn, 0)).toEqual([
    { x: 0, y: 0 },
    { x: 10, y: 0 },
    { x: 10, y: 10 },
  ]);
});

test('no drawn point is farther from the line that is left than the tolerance', () => {
  fc.assert(
    fc.property(line, fc.double({ min: 0, max: 100, noNaN: true }), (points, tolerance) => {
      const left = simplified(points, tolerance);
      expect(left.at(0)).toBe(points.at(0));
      expect(left.at(-1)).toBe(points.at(-1));
      for (const p of points) expect(closestOnPolyline(p, left).distance).toBeLessThanOrEqual(tolerance + 1e-9);
    }),
    RUNS,
  );
});

// Outside check: @turf/turf's simplify (simplify-js) in its high quality, which is the same published method.
test('turf keeps the same points', () => {
  fc.assert(
    fc.property(line, fc.integer({ min: 1, max: 80 }), (points, tolerance) => {
      const other = simplify(lineString(points.map(({ x, y }) => [x, y])), { tolerance, highQuality: true });
      const ours = simplified(points, tolerance).map(({ x, y }) => [x, y]);
      // With two points left turf may keep a repeat of the start for its own lines' sake.
      if (ours.length > 2) expect(other.geometry.coordinates).toEqual(ours);
    }),
    RUNS,
  );
});

test('a line of any length is brought down to so many points', () => {
  const wave = Array.from({ length: 5000 }, (_, i) => ({ x: i / 10, y: 40 * Math.sin(i / 30) }));
  const left = simplifiedTo(wave, 100, 0.05);
  expect(left.length).toBeLessThanOrEqual(100);
  expect(left.length).toBeGreaterThan(30);
  expect(left.at(-1)).toBe(wave.at(-1));
});

test('a stroke back and forth over itself ends too', () => {
  const still = Array.from({ length: 900 }, () => ({ x: 3, y: 3 }));
  expect(simplifiedTo(still, 2, 0)).toHaveLength(2);
});

test('a tolerance below 0 is the caller’s bug', () => {
  expect(() => simplified([], -1)).toThrow(RangeError);
  expect(() => simplifiedTo([], 1, 0)).toThrow(RangeError);
});
