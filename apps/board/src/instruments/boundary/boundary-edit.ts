import { ringContains } from '@loopwright/geometry';
import { type Boundary, LIMITS, type Ring, type SitePoint } from '@loopwright/model';

/** Which line of the boundary is drawn: all of it anew, a further piece of land, or someone else's land inside. */
export type BoundaryPart = 'anew' | 'further' | 'inner';

/** The boundary with an outline just drawn. */
export function boundaryWith(now: Boundary | undefined, part: BoundaryPart, ring: Ring, tolerance: number): Boundary {
  if (!now || part === 'anew') return { outlines: [ring], inner: [], tolerance };
  return part === 'inner' ? { ...now, inner: [...now.inner, ring] } : { ...now, outlines: [...now.outlines, ring] };
}

/** Why such an outline is not taken; `undefined` when it is. */
export function boundaryRefusal(
  now: Boundary | undefined,
  part: BoundaryPart,
  points: readonly SitePoint[],
): string | undefined {
  if (!now || part === 'anew') return undefined;
  const rings = part === 'inner' ? now.inner : now.outlines;
  if (rings.length >= LIMITS.boundaryOutlines) {
    return `A boundary has ${LIMITS.boundaryOutlines} such outlines at most: remove one first.`;
  }
  const isInside = (point: SitePoint) => now.outlines.some((ring) => ringContains(ring, point));
  if (part === 'inner' && !points.every(isInside)) {
    return "Someone else's land inside lies within the boundary: a corner of this one does not, so it was not written.";
  }
  return undefined;
}
