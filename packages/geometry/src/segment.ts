import type { SitePoint } from '@loopwright/model';
import { distanceBetween, pointBetween } from './point.ts';

export interface ClosestOnSegment {
  readonly point: SitePoint;
  readonly distance: number;
  /** Share of the segment, 0 at its start to 1 at its end. */
  readonly along: number;
}

/** The point of a segment nearest to `p`. A segment of no length is its point. */
export function closestOnSegment(p: SitePoint, a: SitePoint, b: SitePoint): ClosestOnSegment {
  const along = shareNearest(p, a, b);
  const point = pointBetween(a, b, along);
  return { point, distance: distanceBetween(p, point), along };
}

function shareNearest(p: SitePoint, a: SitePoint, b: SitePoint): number {
  const dx = b.x - a.x;
  const dy = b.y - a.y;
  const squared = dx * dx + dy * dy;
  if (!(squared > 0)) return 0;
  const share = ((p.x - a.x) * dx + (p.y - a.y) * dy) / squared;
  return Math.min(1, Math.max(0, share));
}

/** Shares of both segments where they cross, touching included; `undefined` for parallel ones. */
export function crossingShares(
  a: SitePoint,
  b: SitePoint,
  c: SitePoint,
  d: SitePoint,
): { readonly first: number; readonly second: number } | undefined {
  const abx = b.x - a.x;
  const aby = b.y - a.y;
  const cdx = d.x - c.x;
  const cdy = d.y - c.y;
  const turn = abx * cdy - aby * cdx;
  if (turn === 0) return undefined;
  const acx = c.x - a.x;
  const acy = c.y - a.y;
  const first = (acx * cdy - acy * cdx) / turn;
  if (first < 0 || first > 1) return undefined;
  const second = (acx * aby - acy * abx) / turn;
  if (second < 0 || second > 1) return undefined;
  return { first, second };
}

/**
 * Where two segments cross or touch. Parallel segments have no one crossing, overlapping ones neither:
 * `undefined`, and `segmentsApart` says 0.
 */
export function segmentCrossing(a: SitePoint, b: SitePoint, c: SitePoint, d: SitePoint): SitePoint | undefined {
  const shares = crossingShares(a, b, c, d);
  return shares && pointBetween(a, b, shares.first);
}

export interface Apart {
  readonly distance: number;
  /** The nearest place on the first. */
  readonly first: SitePoint;
  /** The nearest place on the second. */
  readonly second: SitePoint;
}

/** How far two segments lie apart, and where they come closest: 0 where they cross. */
export function segmentsApart(a: SitePoint, b: SitePoint, c: SitePoint, d: SitePoint): Apart {
  const at = segmentCrossing(a, b, c, d);
  if (at) return { distance: 0, first: at, second: at };
  // The closest of the four ends is found first: only its two places are made.
  const fromC = squaredTo(c, a, b);
  const fromD = squaredTo(d, a, b);
  const fromA = squaredTo(a, c, d);
  const fromB = squaredTo(b, c, d);
  const least = Math.min(fromC, fromD, fromA, fromB);
  if (fromC === least || fromD === least) {
    const second = fromC === least ? c : d;
    const { point, distance } = closestOnSegment(second, a, b);
    return { distance, first: point, second };
  }
  const first = fromA === least ? a : b;
  const { point, distance } = closestOnSegment(first, c, d);
  return { distance, first, second: point };
}

function squaredTo(p: SitePoint, a: SitePoint, b: SitePoint): number {
  const along = shareNearest(p, a, b);
  const dx = p.x - (a.x + (b.x - a.x) * along);
  const dy = p.y - (a.y + (b.y - a.y) * along);
  return dx * dx + dy * dy;
}
