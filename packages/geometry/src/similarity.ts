import type { SitePoint } from '@loopwright/model';
import { distanceBetween } from './point.ts';

/** A turn, an even scale and a shift: x′ = p·x − q·y + e, y′ = q·x + p·y + n. */
export interface Similarity {
  readonly p: number;
  readonly q: number;
  readonly e: number;
  readonly n: number;
}

/** A point, and where it belongs. */
export interface PointPair {
  readonly from: SitePoint;
  readonly to: SitePoint;
}

/** Where a similarity puts a point. */
export function carried({ p, q, e, n }: Similarity, { x, y }: SitePoint): SitePoint {
  return { x: p * x - q * y + e, y: q * x + p * y + n };
}

/**
 * The turn, even scale and shift that brings points closest to where they belong: the sum of the squares of what is left
 * is least. One pair is a shift; two fit exactly.
 *
 * @returns `undefined` without pairs, or when all points, or all the places they belong, are one: nothing to go by
 *
 * Cost: O(pairs), in + − × ÷ only.
 *
 * Source: the four-parameter (two-dimensional conformal, Helmert) transformation by least squares, about the means of both
 * sets of points; standard surveying, from memory.
 */
export function fitSimilarity(pairs: readonly PointPair[]): Similarity | undefined {
  const [first] = pairs;
  if (!first) return undefined;
  if (pairs.length === 1) return { p: 1, q: 0, e: first.to.x - first.from.x, n: first.to.y - first.from.y };
  const [from, to] = [meanOf(pairs.map((pair) => pair.from)), meanOf(pairs.map((pair) => pair.to))];
  let [along, across, spread] = [0, 0, 0];
  for (const pair of pairs) {
    const [x, y] = [pair.from.x - from.x, pair.from.y - from.y];
    const [u, v] = [pair.to.x - to.x, pair.to.y - to.y];
    along += x * u + y * v;
    across += x * v - y * u;
    spread += x * x + y * y;
  }
  const [p, q] = [along / spread, across / spread];
  if (!Number.isFinite(p + q) || (p === 0 && q === 0)) return undefined;
  return { p, q, e: to.x - (p * from.x - q * from.y), n: to.y - (q * from.x + p * from.y) };
}

/** How far each point is left from where it belongs, in metres (of the places), in the order of the pairs. */
export function distancesLeft(similarity: Similarity, pairs: readonly PointPair[]): readonly number[] {
  return pairs.map(({ from, to }) => distanceBetween(carried(similarity, from), to));
}

function meanOf(points: readonly SitePoint[]): SitePoint {
  const sum = points.reduce((so, { x, y }) => ({ x: so.x + x, y: so.y + y }), { x: 0, y: 0 });
  return { x: sum.x / points.length, y: sum.y / points.length };
}
