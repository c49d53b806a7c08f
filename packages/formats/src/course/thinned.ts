import { closestOnSegment } from '@loopwright/geometry';
import { LIMITS, type Ring, type SitePoint } from '@loopwright/model';

/** Where thinning starts (m); doubled until few enough points are left. */
const FINEST = 0.1;

/**
 * A line of at most `most` points that stays as near to the drawn one as can be, and how far off it may be (m).
 *
 * Source: D. Douglas and T. Peucker, "Algorithms for the reduction of the number of points required to represent a
 * digitized line or its caricature", The Canadian Cartographer 10 (1973).
 */
export function thinnedLine(
  points: readonly SitePoint[],
  most: number = LIMITS.linePoints,
): { readonly points: readonly SitePoint[]; readonly within: number } {
  if (points.length <= most) return { points, within: 0 };
  let within = FINEST;
  let kept = reduced(points, within);
  while (kept.length > most) {
    within *= 2;
    kept = reduced(points, within);
  }
  return { points: kept, within };
}

/** The same for an outline; undefined when nothing of it is left. */
export function thinnedRing(ring: Ring): { readonly points: Ring; readonly within: number } | undefined {
  const first = ring[0];
  if (!first || ring.length <= LIMITS.ringPoints) return { points: ring, within: 0 };
  const { points, within } = thinnedLine([...ring, first], LIMITS.ringPoints + 1);
  const outline = points.slice(0, -1);
  return outline.length >= 3 ? { points: outline, within } : undefined;
}

function reduced(points: readonly SitePoint[], within: number): readonly SitePoint[] {
  const keep = new Set([0, points.length - 1]);
  const stretches: [number, number][] = [[0, points.length - 1]];
  for (let stretch = stretches.pop(); stretch; stretch = stretches.pop()) {
    const [from, to] = stretch;
    const farthest = farthestBetween(points, from, to);
    if (farthest === undefined || farthest.distance <= within) continue;
    keep.add(farthest.index);
    stretches.push([from, farthest.index], [farthest.index, to]);
  }
  return points.filter((_, index) => keep.has(index));
}

function farthestBetween(points: readonly SitePoint[], from: number, to: number) {
  const [start, end] = [points[from], points[to]];
  if (!start || !end) return undefined;
  let farthest: { index: number; distance: number } | undefined;
  for (let index = from + 1; index < to; index++) {
    const point = points[index];
    if (!point) continue;
    const { distance } = closestOnSegment(point, start, end);
    if (farthest === undefined || distance > farthest.distance) farthest = { index, distance };
  }
  return farthest;
}
