import type { SitePoint } from '@loopwright/model';
import { distanceBetween, pointBetween } from './point.ts';
import { closestOnSegment } from './segment.ts';

/** Sum of the legs; 0 for one point or none. */
export function polylineLength(points: readonly SitePoint[]): number {
  let sum = 0;
  for (let i = 1; i < points.length; i++) {
    const a = points[i - 1];
    const b = points[i];
    if (a && b) sum += distanceBetween(a, b);
  }
  return sum;
}

/**
 * The point so many metres along a line; before its start the start, past its end the end.
 *
 * @throws RangeError for an empty line: the caller's bug
 */
export function pointAlong(points: readonly SitePoint[], distance: number): SitePoint {
  const start = points[0];
  if (!start) throw new RangeError('pointAlong: a line needs at least one point');
  let left = distance;
  let from = start;
  if (left <= 0) return start;
  for (let i = 1; i < points.length; i++) {
    const to = points[i];
    if (!to) break;
    const leg = distanceBetween(from, to);
    if (left < leg) return pointBetween(from, to, left / leg);
    left -= leg;
    from = to;
  }
  return from;
}

export interface ClosestOnPolyline {
  readonly point: SitePoint;
  readonly distance: number;
  /** Metres from the start of the line. */
  readonly along: number;
  /** Index of the leg it lies on, 0 the first. */
  readonly leg: number;
}

/**
 * The place of a line nearest to `p`; the first of equally near ones.
 *
 * @throws RangeError for an empty line: the caller's bug
 */
export function closestOnPolyline(p: SitePoint, points: readonly SitePoint[]): ClosestOnPolyline {
  const start = points[0];
  if (!start) throw new RangeError('closestOnPolyline: a line needs at least one point');
  let best: ClosestOnPolyline = { point: start, distance: distanceBetween(p, start), along: 0, leg: 0 };
  let before = 0;
  for (let i = 1; i < points.length; i++) {
    const a = points[i - 1];
    const b = points[i];
    if (!a || !b) continue;
    const leg = distanceBetween(a, b);
    const near = closestOnSegment(p, a, b);
    if (near.distance < best.distance) {
      best = { point: near.point, distance: near.distance, along: before + near.along * leg, leg: i - 1 };
    }
    before += leg;
  }
  return best;
}

/** The part of a line between two distances along it, bends kept; its ends are kept within the line. */
export function stretch(points: readonly SitePoint[], from: number, to: number): readonly SitePoint[] {
  const part: SitePoint[] = [pointAlong(points, from)];
  let before = 0;
  for (let i = 1; i < points.length; i++) {
    const a = points[i - 1];
    const b = points[i];
    if (!a || !b) continue;
    before += distanceBetween(a, b);
    if (before > from && before < to) part.push(b);
  }
  part.push(pointAlong(points, to));
  return part;
}
