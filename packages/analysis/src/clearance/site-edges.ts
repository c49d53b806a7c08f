import { type Box, boundsOf, boxIndex, closestOnSegment, eachEdge, ringContains } from '@loopwright/geometry';
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

/** Indexes a boundary once; the boundary is replaced, never changed. O(n log n). */
export function siteEdges(boundary: Boundary): SiteEdges {
  const all: Edge[] = [];
  for (const ring of [...boundary.outlines, ...boundary.inner]) eachEdge(ring, (a, b) => all.push({ a, b }));
  const index = boxIndex(all.map(({ a, b }) => boundsOf([a, b])));
  return {
    tolerance: boundary.tolerance,
    all,
    near: (box) => index.search(box).flatMap((place) => all[place] ?? []),
    contains: (place) =>
      boundary.outlines.some((ring) => ringContains(ring, place)) &&
      !boundary.inner.some((ring) => ringContains(ring, place)),
  };
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
