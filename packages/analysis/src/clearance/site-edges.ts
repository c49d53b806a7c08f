import {
  type Box,
  boundsOf,
  boxIndex,
  closestOnSegment,
  eachEdge,
  minus,
  plus,
  pointBetween,
  ringContains,
  scaled,
  turnedLeft,
  unitVector,
} from '@loopwright/geometry';
import type { Boundary, SitePoint } from '@loopwright/model';

export interface Edge {
  readonly a: SitePoint;
  readonly b: SitePoint;
}

/** Where the site ends, found by place. */
export interface SiteEdges {
  /** How far the line may be off, metres. */
  readonly tolerance: number;
  readonly all: readonly Edge[];
  near(box: Box): readonly Edge[];
  /** Whether a place is on the site: inside an outline, and on nobody's land within it. */
  contains(place: SitePoint): boolean;
}

/** How far to either side of an edge the site is tried, metres. */
const BESIDE = 0.05;

/**
 * Indexes a boundary once; the boundary is replaced, never changed. O(n log n), with several outlines O(n²).
 *
 * An edge with the site on both sides, as where two pieces of land meet, ends nothing and is left out.
 */
export function siteEdges(boundary: Boundary): SiteEdges {
  const all: Edge[] = [];
  const contains = (place: SitePoint) =>
    boundary.outlines.some((ring) => ringContains(ring, place)) &&
    !boundary.inner.some((ring) => ringContains(ring, place));
  const canMeet = boundary.outlines.length > 1;
  for (const ring of [...boundary.outlines, ...boundary.inner]) {
    eachEdge(ring, (a, b) => {
      if (!canMeet || !isWithin({ a, b }, contains)) all.push({ a, b });
    });
  }
  const index = boxIndex(all.map(({ a, b }) => boundsOf([a, b])));
  return {
    tolerance: boundary.tolerance,
    all,
    near: (box) => index.search(box).flatMap((place) => all[place] ?? []),
    contains,
  };
}

/** Whether the site lies on both sides of an edge, near its ends and in its middle. */
function isWithin({ a, b }: Edge, contains: (place: SitePoint) => boolean): boolean {
  const towards = unitVector(a, b);
  if (!towards) return true;
  const aside = scaled(turnedLeft(towards), BESIDE);
  return [0.01, 0.5, 0.99].every((share) => {
    const place = pointBetween(a, b, share);
    return contains(plus(place, aside)) && contains(minus(place, aside));
  });
}

/** The place on some edges that is nearest. */
export function nearestEdge(
  place: SitePoint,
  edges: readonly Edge[],
): { readonly distance: number; readonly at: SitePoint } | undefined {
  let best: { distance: number; at: SitePoint } | undefined;
  for (const { a, b } of edges) {
    const near = closestOnSegment(place, a, b);
    if (!best || near.distance < best.distance) best = { distance: near.distance, at: near.point };
  }
  return best;
}
