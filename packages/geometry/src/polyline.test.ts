import type { SitePoint } from '@loopwright/model';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { distanceBetween } from './point.ts';
import { closestOnPolyline, pointAlong, polylineLength, stretch } from './polyline.ts';
import { polylineCrossings, polylinesApart } from './polyline-pairs.ts';

const coordinate = fc.integer({ min: -2000, max: 2000 });
const point: fc.Arbitrary<SitePoint> = fc.record({ x: coordinate, y: coordinate });
const line = fc.array(point, { minLength: 2, maxLength: 6 });
const share = fc.double({ min: 0, max: 1, noNaN: true });
const RUNS = { numRuns: 300, seed: 20_260_503 };

/** The legs of a 3-4-5 triangle and then some: 5 + 12. */
const ELBOW = [
  { x: 0, y: 0 },
  { x: 3, y: 4 },
  { x: 15, y: 4 },
];

describe('a line', () => {
  test('of legs 5 and 12 is 17 long; a point or nothing has no length', () => {
    expect(polylineLength(ELBOW)).toBe(17);
    expect(polylineLength([{ x: 1, y: 1 }])).toBe(0);
    expect(polylineLength([])).toBe(0);
  });

  test('is walked along from its start, and no further than its end', () => {
    expect(pointAlong(ELBOW, -1)).toEqual({ x: 0, y: 0 });
    expect(pointAlong(ELBOW, 5)).toEqual({ x: 3, y: 4 });
    expect(pointAlong(ELBOW, 11)).toEqual({ x: 9, y: 4 });
    expect(pointAlong(ELBOW, 99)).toEqual({ x: 15, y: 4 });
    expect(() => pointAlong([], 1)).toThrow(RangeError);
  });

  test('cut in two keeps its length', () => {
    fc.assert(
      fc.property(line, share, (points, cut) => {
        const length = polylineLength(points);
        const parts =
          polylineLength(stretch(points, 0, cut * length)) + polylineLength(stretch(points, cut * length, length));
        expect(Math.abs(parts - length)).toBeLessThan(1e-8);
      }),
      RUNS,
    );
  });

  test('is met nearest at the place that its distance along says', () => {
    fc.assert(
      fc.property(line, point, (points, p) => {
        const near = closestOnPolyline(p, points);
        expect(distanceBetween(pointAlong(points, near.along), near.point)).toBeLessThan(1e-8);
      }),
      RUNS,
    );
  });
});

describe('two lines', () => {
  test('cross at each place once, in order, even at a bend', () => {
    const zigzag = [
      { x: 0, y: 0 },
      { x: 10, y: 10 },
      { x: 20, y: 0 },
    ];
    const level = [
      { x: -10, y: 5 },
      { x: 10, y: 5 },
      { x: 30, y: 5 },
    ];
    const crossings = polylineCrossings(level, zigzag);
    expect(crossings.map(({ at }) => at)).toEqual([
      { x: 5, y: 5 },
      { x: 15, y: 5 },
    ]);
    expect(crossings.map(({ alongFirst }) => alongFirst)).toEqual([15, 25]);
    const through = polylineCrossings(zigzag, [
      { x: 10, y: -5 },
      { x: 10, y: 25 },
    ]);
    expect(through).toHaveLength(1);
  });

  test('that cross are 0 apart; others as far as their nearest points', () => {
    fc.assert(
      fc.property(line, line, (a, b) => {
        const apart = polylinesApart(a, b);
        const nearest = Math.min(...a.map((p) => closestOnPolyline(p, b).distance));
        expect(apart.distance).toBeLessThanOrEqual(nearest);
        if (polylineCrossings(a, b).length > 0) expect(apart.distance).toBe(0);
      }),
      RUNS,
    );
  });
});
