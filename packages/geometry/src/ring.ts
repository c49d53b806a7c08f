import type { Ring, SitePoint } from '@loopwright/model';
import { distanceBetween } from './point.ts';
import { closestOnSegment } from './segment.ts';

/** Area inside a ring, positive when it runs counter-clockwise, negative clockwise; 0 for fewer than three points. */
export function ringArea(ring: Ring): number {
  const origin = ring[0];
  if (!origin) return 0;
  let twice = 0;
  eachEdge(ring, (a, b) => {
    // Measured from the ring's own first point: far from the plane's origin the products would lose digits.
    twice += (a.x - origin.x) * (b.y - origin.y) - (b.x - origin.x) * (a.y - origin.y);
  });
  return twice / 2;
}

/**
 * Centre of the area inside a ring; of a ring without area, the mean of its points.
 *
 * @throws RangeError for an empty ring: the caller's bug
 */
export function ringCentroid(ring: Ring): SitePoint {
  const origin = ring[0];
  if (!origin) throw new RangeError('ringCentroid: a ring needs at least one point');
  let twice = 0;
  let x = 0;
  let y = 0;
  eachEdge(ring, (a, b) => {
    const ax = a.x - origin.x;
    const ay = a.y - origin.y;
    const bx = b.x - origin.x;
    const by = b.y - origin.y;
    const piece = ax * by - bx * ay;
    twice += piece;
    x += (ax + bx) * piece;
    y += (ay + by) * piece;
  });
  if (twice !== 0) return { x: origin.x + x / (3 * twice), y: origin.y + y / (3 * twice) };
  const sum = ring.reduce((total, p) => ({ x: total.x + p.x, y: total.y + p.y }), { x: 0, y: 0 });
  return { x: sum.x / ring.length, y: sum.y / ring.length };
}

/** Whether a point lies inside a ring, by the even-odd rule; a point on the very edge may go either way. */
export function ringContains(ring: Ring, p: SitePoint): boolean {
  let inside = false;
  let a = ring[ring.length - 1];
  for (const b of ring) {
    if (a && a.y > p.y !== b.y > p.y && p.x < ((b.x - a.x) * (p.y - a.y)) / (b.y - a.y) + a.x) inside = !inside;
    a = b;
  }
  return inside;
}

export interface DistanceToRing {
  /** To the line of the ring itself, inside or out. */
  readonly distance: number;
  /** The nearest point of the line. */
  readonly point: SitePoint;
}

/**
 * How far a point is from the line of a ring, from within or without.
 *
 * @throws RangeError for an empty ring: the caller's bug
 */
export function distanceToRing(p: SitePoint, ring: Ring): DistanceToRing {
  const first = ring[0];
  if (!first) throw new RangeError('distanceToRing: a ring needs at least one point');
  let best: DistanceToRing = { distance: distanceBetween(p, first), point: first };
  eachEdge(ring, (a, b) => {
    const near = closestOnSegment(p, a, b);
    if (near.distance < best.distance) best = { distance: near.distance, point: near.point };
  });
  return best;
}

/** Visits the edges once around, the closing one last. */
export function eachEdge(ring: Ring, visit: (a: SitePoint, b: SitePoint) => void): void {
  for (let i = 0; i < ring.length; i++) {
    const a = ring[i];
    const b = ring[i + 1] ?? ring[0];
    if (a && b) visit(a, b);
  }
}
