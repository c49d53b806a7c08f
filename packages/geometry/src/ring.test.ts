import type { SitePoint } from '@loopwright/model';
import { booleanPointInPolygon, kinks, polygon, point as turfPoint } from '@turf/turf';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { distanceToRing, ringArea, ringCentroid, ringContains } from './ring.ts';
import { ringIsSimple } from './ring-simple.ts';

const coordinate = fc.integer({ min: -100, max: 100 });
const point: fc.Arbitrary<SitePoint> = fc.record({ x: coordinate, y: coordinate });
const ring = fc.uniqueArray(point, { minLength: 3, maxLength: 9, selector: ({ x, y }) => `${x} ${y}` });
const RUNS = { numRuns: 400, seed: 20_260_504 };

const SQUARE = [
  { x: 0, y: 0 },
  { x: 10, y: 0 },
  { x: 10, y: 10 },
  { x: 0, y: 10 },
];

const closed = (points: readonly SitePoint[]) =>
  polygon([[...points, ...points.slice(0, 1)].map(({ x, y }) => [x, y])]);

describe('a ring', () => {
  test('has an area with the sign of its turn, wherever on the plane it lies', () => {
    const far = SQUARE.map(({ x, y }) => ({ x: x + 1e6, y: y - 1e6 }));
    expect(ringArea(SQUARE)).toBe(100);
    expect(ringArea([...SQUARE].reverse())).toBe(-100);
    expect(ringArea(far)).toBe(100);
    expect(ringCentroid(far)).toEqual({ x: 1e6 + 5, y: -1e6 + 5 });
  });

  test.each([1e-9, 1e9])('drawn %d times as large has the area squared', (scale) => {
    fc.assert(
      fc.property(ring, (points) => {
        const large = points.map(({ x, y }) => ({ x: x * scale, y: y * scale }));
        const expected = ringArea(points) * scale * scale;
        expect(Math.abs(ringArea(large) - expected)).toBeLessThanOrEqual(1e-7 * scale * scale);
      }),
      RUNS,
    );
  });

  test('turned by a quarter keeps its area, mirrored turns the other way', () => {
    fc.assert(
      fc.property(ring, (points) => {
        expect(ringArea(points.map(({ x, y }) => ({ x: -y, y: x })))).toBe(ringArea(points));
        expect(ringArea(points.map(({ x, y }) => ({ x: -x, y }))) + ringArea(points)).toBe(0);
      }),
      RUNS,
    );
  });

  // Second opinion: @turf/turf booleanPointInPolygon, planar; points on the edge left out, where either may be right.
  test('holds the points that turf says it holds', () => {
    fc.assert(
      fc.property(ring, point, (points, p) => {
        fc.pre(ringIsSimple(points) && distanceToRing(p, points).distance > 1e-9);
        expect(ringContains(points, p)).toBe(booleanPointInPolygon(turfPoint([p.x, p.y]), closed(points)));
      }),
      RUNS,
    );
  });

  // Second opinion: @turf/turf kinks, planar; it lists where the line crosses itself.
  test('that turf finds kinks in is not simple', () => {
    fc.assert(
      fc.property(ring, (points) => {
        if (kinks(closed(points)).features.length > 0) expect(ringIsSimple(points)).toBe(false);
      }),
      RUNS,
    );
  });

  test('is simple or not by what its line does', () => {
    const at = (x: number, y: number) => ({ x, y });
    expect(ringIsSimple(SQUARE)).toBe(true);
    expect(ringIsSimple([at(0, 0), at(10, 10), at(10, 0), at(0, 10)])).toBe(false);
    expect(ringIsSimple([at(0, 0), at(10, 0)])).toBe(false);
    expect(ringIsSimple([at(0, 0), at(10, 0), at(5, 0), at(5, 5)])).toBe(false);
    expect(ringIsSimple([at(0, 0), at(10, 0), at(10, 0), at(5, 5)])).toBe(false);
  });
});
