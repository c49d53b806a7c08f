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

/** An outline smaller than this across is left to a nearer look: its vertices would only lie on each other. */
const LEAST = 36;

/** The grips of a thing at this scale, clear of the sign it is moved by. O(vertices). */
export function landGrips(site: Site, thing: SiteThing | undefined, scale: number): readonly LandGrip[] {
  if (!thing) return [];
  const outlines = outlinesOf(site, thing);
  const grips = outlines.flatMap((shown) => gripsOfOutline(shown, scale, outlines.length));
  const sign = thing.kind === 'base' ? site.bases.find(({ id }) => id === thing.id)?.apron : undefined;
  return sign ? grips.filter(({ at }) => distanceBetween(at, sign) * scale >= CLEAR_OF_SIGN) : grips;
}

const CLEAR_OF_SIGN = 22;

/** @param among  how many outlines the thing has: of several, one without room has no grip beside it */
function gripsOfOutline(shown: OutlineShown, scale: number, among: number): readonly LandGrip[] {
  const { outline, points, isClosed } = shown;
  const grips: LandGrip[] = [];
  const box = points.length > 1 ? boundsOf(points) : undefined;
  const inside = wholeGripInside(shown, scale);
  const beside = box && among === 1 ? { x: (box.minX + box.maxX) / 2, y: box.maxY + ABOVE / scale } : undefined;
  const at = inside ?? beside;
  if (at) grips.push({ kind: 'whole', outline, at });
  if (box && Math.max(box.maxX - box.minX, box.maxY - box.minY) * scale < LEAST) return grips;
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

/** In the middle of an area, where that has room for it. */
function wholeGripInside({ points, isClosed }: OutlineShown, scale: number): SitePoint | undefined {
  if (!isClosed || ringArea(points) === 0) return undefined;
  const box = boundsOf(points);
  const hasRoom = (box.maxX - box.minX) * scale > ROOM && (box.maxY - box.minY) * scale > ROOM;
  const middle = ringCentroid(points);
  return hasRoom && ringContains(points, middle) ? middle : undefined;
}
