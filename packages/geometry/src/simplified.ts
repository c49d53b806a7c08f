import type { SitePoint } from '@loopwright/model';
import { closestOnSegment } from './segment.ts';

/**
 * A line with fewer points that nowhere strays from the drawn one by more than `tolerance` metres; its ends stay.
 *
 * A tolerance of 0 takes off only points that lie on the straight line between their neighbours. Cost: O(n²) at worst,
 * O(n log n) for a hand's lines; the points that wait are kept in a list, so a long line does not fill the call stack.
 * Source: D. H. Douglas, T. K. Peucker, "Algorithms for the reduction of the number of points required to represent a
 * digitized line or its caricature", Cartographica 10 (1973).
 *
 * @throws RangeError for a tolerance below 0 or not finite: the caller's bug
 */
export function simplified(points: readonly SitePoint[], tolerance: number): readonly SitePoint[] {
  if (!(tolerance >= 0) || !Number.isFinite(tolerance))
    throw new RangeError('simplified: the tolerance must be 0 or more');
  const last = points.length - 1;
  if (last < 2) return points;
  const kept = new Set([0, last]);
  const waiting: [number, number][] = [[0, last]];
  for (let next = waiting.pop(); next; next = waiting.pop()) {
    const [from, to] = next;
    const far = farthestBetween(points, from, to);
    if (!far || far.distance <= tolerance) continue;
    kept.add(far.index);
    waiting.push([from, far.index], [far.index, to]);
  }
  return points.filter((_, index) => kept.has(index));
}

/** The point between two others that lies farthest from the straight line that joins them; the first of equals. */
function farthestBetween(points: readonly SitePoint[], from: number, to: number) {
  const [a, b] = [points[from], points[to]];
  if (!a || !b) return undefined;
  let far: { readonly index: number; readonly distance: number } | undefined;
  for (let index = from + 1; index < to; index++) {
    const p = points[index];
    if (!p) continue;
    const { distance } = closestOnSegment(p, a, b);
    if (!far || distance > far.distance) far = { index, distance };
  }
  return far;
}

/**
 * A line of at most `most` points, as near to the drawn one as halving steps of the tolerance allow.
 *
 * @param tolerance  metres that may be lost in any case
 * Cost: `simplified` once for every doubling of the tolerance.
 *
 * @throws RangeError for fewer than two points allowed: the caller's bug
 */
export function simplifiedTo(points: readonly SitePoint[], most: number, tolerance: number): readonly SitePoint[] {
  if (!(most >= 2)) throw new RangeError('simplifiedTo: a line needs two points at least');
  let allowed = tolerance;
  let line = simplified(points, allowed);
  while (line.length > most) {
    allowed = allowed > 0 ? allowed * 2 : 0.001;
    line = simplified(points, allowed);
  }
  return line;
}
