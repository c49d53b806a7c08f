import type { SitePoint } from '@loopwright/model';
import { lineIntersect, lineString } from '@turf/turf';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { distanceBetween } from './point.ts';
import { closestOnSegment, segmentCrossing, segmentsApart } from './segment.ts';

const coordinate = fc.integer({ min: -2000, max: 2000 });
const point: fc.Arbitrary<SitePoint> = fc.record({ x: coordinate, y: coordinate });
const RUNS = { numRuns: 500, seed: 20_260_502 };

const quarter = ({ x, y }: SitePoint): SitePoint => ({ x: -y, y: x });
const mirror = ({ x, y }: SitePoint): SitePoint => ({ x: -x, y });
const SCALES = [1e-9, 1, 1e9];

describe('the nearest place on a segment', () => {
  test('is an end for a point beyond it, and the foot of the perpendicular beside it', () => {
    const a = { x: 0, y: 0 };
    const b = { x: 10, y: 0 };
    expect(closestOnSegment({ x: -3, y: 4 }, a, b)).toEqual({ point: a, distance: 5, along: 0 });
    expect(closestOnSegment({ x: 4, y: 7 }, a, b)).toEqual({ point: { x: 4, y: 0 }, distance: 7, along: 0.4 });
    expect(closestOnSegment({ x: 3, y: 4 }, a, a)).toEqual({ point: a, distance: 5, along: 0 });
  });

  test('no other place on the segment is nearer', () => {
    fc.assert(
      fc.property(point, point, point, fc.double({ min: 0, max: 1, noNaN: true }), (p, a, b, t) => {
        const other = { x: a.x + (b.x - a.x) * t, y: a.y + (b.y - a.y) * t };
        // A few units in the last place of coordinates up to 2,000.
        expect(closestOnSegment(p, a, b).distance).toBeLessThanOrEqual(distanceBetween(p, other) + 1e-9);
      }),
      RUNS,
    );
  });

  test.each(SCALES)('turned, mirrored and drawn %d times as large it is as far', (scale) => {
    fc.assert(
      fc.property(point, point, point, (p, a, b) => {
        const expected = closestOnSegment(p, a, b).distance * scale;
        for (const motion of [quarter, mirror]) {
          const [q, c, d] = [p, a, b].map(motion).map(({ x, y }) => ({ x: x * scale, y: y * scale }));
          if (!q || !c || !d) throw new Error('three points stay three points');
          expect(Math.abs(closestOnSegment(q, c, d).distance - expected)).toBeLessThanOrEqual(1e-9 * scale);
        }
      }),
      RUNS,
    );
  });
});

describe('where two segments cross', () => {
  // Second opinion: @turf/turf lineIntersect, which is planar.
  test('agrees with turf wherever they cross clear of their ends', () => {
    fc.assert(
      fc.property(point, point, point, point, (a, b, c, d) => {
        const ours = segmentCrossing(a, b, c, d);
        const line = (p: SitePoint, q: SitePoint) => lineString([p, q].map(({ x, y }) => [x, y]));
        fc.pre(distanceBetween(a, b) > 0 && distanceBetween(c, d) > 0);
        const apartEnds = [a, b].every((end) => closestOnSegment(end, c, d).distance > 1e-6);
        const apartOthers = [c, d].every((end) => closestOnSegment(end, a, b).distance > 1e-6);
        fc.pre(apartEnds && apartOthers);
        const [theirs] = lineIntersect(line(a, b), line(c, d)).features;
        expect(ours === undefined).toBe(theirs === undefined);
        const [x, y] = theirs?.geometry.coordinates ?? [];
        if (!ours || x === undefined || y === undefined) return;
        expect(distanceBetween(ours, { x, y })).toBeLessThan(1e-6);
      }),
      RUNS,
    );
  });

  test('touching counts, parallel does not', () => {
    const at = (x: number, y: number) => ({ x, y });
    expect(segmentCrossing(at(0, 0), at(10, 0), at(5, 0), at(5, 9))).toEqual(at(5, 0));
    expect(segmentCrossing(at(0, 0), at(10, 0), at(0, 1), at(10, 1))).toBeUndefined();
  });
});

describe('how far segments lie apart', () => {
  test('is 0 exactly where they cross, and the same from either side', () => {
    fc.assert(
      fc.property(point, point, point, point, (a, b, c, d) => {
        const apart = segmentsApart(a, b, c, d);
        const back = segmentsApart(c, d, a, b);
        if (segmentCrossing(a, b, c, d)) expect(apart.distance).toBe(0);
        expect(Math.abs(apart.distance - back.distance)).toBeLessThan(1e-9);
        expect(Math.abs(distanceBetween(apart.first, apart.second) - apart.distance)).toBeLessThan(1e-9);
      }),
      RUNS,
    );
  });
});
