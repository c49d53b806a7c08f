import type { Ring, SitePoint } from '@loopwright/model';
import { orient2d } from 'robust-predicates';
import { boundsOf } from './bounds.ts';
import { boxIndex } from './box-index.ts';

/**
 * Whether a ring has at least three points and its line nowhere crosses or touches itself.
 *
 * Exact for the coordinates as they are written (robust-predicates), so a sliver is judged the same everywhere.
 * Cost: O(n log n) for ordinary outlines, by a spatial index of the edges.
 */
export function ringIsSimple(ring: Ring): boolean {
  if (ring.length < 3) return false;
  const edges = ring.map((a, i) => ({ a, b: ring[(i + 1) % ring.length] ?? a }));
  if (edges.some(({ a, b }) => isSamePoint(a, b))) return false;
  const index = boxIndex(edges.map(({ a, b }) => boundsOf([a, b])));
  return edges.every((edge, i) =>
    index.search(boundsOf([edge.a, edge.b])).every((j) => {
      const other = edges[j];
      if (!other || j <= i) return true;
      if (j === i + 1) return !foldsBack(edge.a, edge.b, other.b);
      if (i === 0 && j === edges.length - 1) return !foldsBack(other.a, other.b, edge.b);
      return !touches(edge.a, edge.b, other.a, other.b);
    }),
  );
}

/** The side of c from the line a → b, exactly: 1 left, −1 right, 0 on it. The library's own sign assumes y down. */
function side(a: SitePoint, b: SitePoint, c: SitePoint): number {
  return -Math.sign(orient2d(a.x, a.y, b.x, b.y, c.x, c.y));
}

function touches(a: SitePoint, b: SitePoint, c: SitePoint, d: SitePoint): boolean {
  const cSide = side(a, b, c);
  const dSide = side(a, b, d);
  const aSide = side(c, d, a);
  const bSide = side(c, d, b);
  if (cSide !== dSide && aSide !== bSide) return true;
  return (
    (cSide === 0 && isWithin(c, a, b)) ||
    (dSide === 0 && isWithin(d, a, b)) ||
    (aSide === 0 && isWithin(a, c, d)) ||
    (bSide === 0 && isWithin(b, c, d))
  );
}

/** Whether the line goes back over itself at `corner`. */
function foldsBack(before: SitePoint, corner: SitePoint, after: SitePoint): boolean {
  if (side(before, corner, after) !== 0) return false;
  return (before.x - corner.x) * (after.x - corner.x) + (before.y - corner.y) * (after.y - corner.y) > 0;
}

function isWithin(p: SitePoint, a: SitePoint, b: SitePoint): boolean {
  return (
    p.x >= Math.min(a.x, b.x) && p.x <= Math.max(a.x, b.x) && p.y >= Math.min(a.y, b.y) && p.y <= Math.max(a.y, b.y)
  );
}

function isSamePoint(a: SitePoint, b: SitePoint): boolean {
  return a.x === b.x && a.y === b.y;
}
