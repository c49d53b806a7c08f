import type { OutlineOf } from '@loopwright/document';
import { boundsOf, distanceBetween, pointBetween, ringArea, ringCentroid, ringContains } from '@loopwright/geometry';
import type { Site, SitePoint } from '@loopwright/model';
import type { SiteThing } from '../../board/parts.ts';
import { type OutlineShown, outlinesOf } from './outlines-of.ts';

/** Something to take hold of on the thing picked out. */
export type LandGrip =
  | { readonly kind: 'vertex'; readonly outline: OutlineOf; readonly at: SitePoint }
  /** In the middle of an edge: puts a vertex in after the one at `after`. */
  | { readonly kind: 'edge'; readonly outline: OutlineOf; readonly after: SitePoint; readonly at: SitePoint }
  /** Moves the whole outline, with what is cut out of it. */
  | { readonly kind: 'whole'; readonly outline: OutlineOf; readonly at: SitePoint };

/** Pixels: vertices closer than this to the last one shown are left to a nearer look. */
const APART = 16;
/** An edge shorter than this on the screen has no room for a grip in its middle. */
const SHORTEST_EDGE = 56;
/** An area smaller than this across has its grip above it, not on it. */
const ROOM = 44;
const ABOVE = 30;

/** The grips of a thing at this scale. O(vertices). */
export function landGrips(site: Site, thing: SiteThing | undefined, scale: number): readonly LandGrip[] {
  return thing ? outlinesOf(site, thing).flatMap((shown) => gripsOfOutline(shown, scale)) : [];
}

function gripsOfOutline(shown: OutlineShown, scale: number): readonly LandGrip[] {
  const { outline, points, isClosed } = shown;
  const grips: LandGrip[] = [];
  if (points.length > 1) grips.push({ kind: 'whole', outline, at: wholeGripAt(shown, scale) });
  let last: SitePoint | undefined;
  points.forEach((at, index) => {
    if (last && distanceBetween(last, at) * scale < APART) return;
    grips.push({ kind: 'vertex', outline, at });
    last = at;
    const next = points[index + 1] ?? (isClosed ? points[0] : undefined);
    if (next && distanceBetween(at, next) * scale >= SHORTEST_EDGE) {
      grips.push({ kind: 'edge', outline, after: at, at: pointBetween(at, next, 0.5) });
    }
  });
  return grips;
}

/** In the middle of an area that has room for it; else above what is drawn. */
function wholeGripAt({ points, isClosed }: OutlineShown, scale: number): SitePoint {
  const box = boundsOf(points);
  const [across, up] = [(box.maxX - box.minX) * scale, (box.maxY - box.minY) * scale];
  const middle = isClosed && ringArea(points) !== 0 ? ringCentroid(points) : undefined;
  if (middle && across > ROOM && up > ROOM && ringContains(points, middle)) return middle;
  return { x: (box.minX + box.maxX) / 2, y: box.maxY + ABOVE / scale };
}
