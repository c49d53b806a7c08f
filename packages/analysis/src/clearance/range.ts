import { distanceBetween, dot, minus, pointAlong, unitVector } from '@loopwright/geometry';
import type { Base, Feature, Ring, Settings, SitePoint } from '@loopwright/model';

/** How the practice range plays: from the tee end of its area to the other, as wide as the tee end is. */
export interface RangePlay {
  readonly feature: Feature;
  /** Middle of the tee end. */
  readonly from: SitePoint;
  readonly towards: SitePoint;
  /** Of the row of stands, metres. */
  readonly halfWidth: number;
  readonly reach: number;
}

/** The share of a range's length that counts as its tee end. */
const TEE_END = 0.25;

/**
 * Reads a range's play from its area: along its longest line, from the end nearer to a base; without a base, from
 * the end where its outline was begun.
 *
 * Source: common practice, no source. `undefined` for a range that is no area.
 */
export function rangePlay(feature: Feature, bases: readonly Base[], settings: Settings): RangePlay | undefined {
  const ring = feature.geometry.type === 'area' ? feature.geometry.rings[0] : undefined;
  const ends = ring && longestLine(ring);
  if (!ring || !ends) return undefined;
  const near = nearBase(ends, bases) ?? nearStart(ends, ring);
  const far = near === ends[0] ? ends[1] : ends[0];
  const along = unitVector(near, far);
  if (!along) return undefined;
  return {
    feature,
    ...teeEnd(ring, near, along, distanceBetween(near, far)),
    towards: along,
    reach: settings['range-reach'],
  };
}

/** Middles of the two short ends: the two far corners each side of the longest distance would play askew. */
function longestLine(ring: Ring): readonly [SitePoint, SitePoint] | undefined {
  let best: { readonly a: SitePoint; readonly b: SitePoint; readonly distance: number } | undefined;
  for (const a of ring) {
    for (const b of ring) {
      const distance = distanceBetween(a, b);
      if (!best || distance > best.distance) best = { a, b, distance };
    }
  }
  if (!best || best.distance === 0) return undefined;
  const { a, b, distance } = best;
  return [endMiddle(ring, a, b, distance), endMiddle(ring, b, a, distance)];
}

function endMiddle(ring: Ring, end: SitePoint, other: SitePoint, length: number): SitePoint {
  const inward = unitVector(end, other) ?? { x: 0, y: 1 };
  const near = ring.filter((point) => dot(minus(point, end), inward) <= length * TEE_END);
  const sum = near.reduce((total, point) => ({ x: total.x + point.x, y: total.y + point.y }), { x: 0, y: 0 });
  return { x: sum.x / near.length, y: sum.y / near.length };
}

function teeEnd(
  ring: Ring,
  near: SitePoint,
  along: SitePoint,
  length: number,
): { readonly from: SitePoint; readonly halfWidth: number } {
  let halfWidth = 0;
  for (const point of ring) {
    const off = minus(point, near);
    if (dot(off, along) > length * TEE_END) continue;
    halfWidth = Math.max(halfWidth, Math.abs(off.x * along.y - off.y * along.x));
  }
  return { from: near, halfWidth };
}

function nearBase(ends: readonly [SitePoint, SitePoint], bases: readonly Base[]): SitePoint | undefined {
  let best: { readonly end: SitePoint; readonly distance: number } | undefined;
  for (const { apron } of bases) {
    for (const end of ends) {
      const distance = distanceBetween(apron, end);
      if (!best || distance < best.distance) best = { end, distance };
    }
  }
  return best?.end;
}

function nearStart(ends: readonly [SitePoint, SitePoint], ring: Ring): SitePoint {
  const start = pointAlong(ring, 0);
  return distanceBetween(start, ends[0]) <= distanceBetween(start, ends[1]) ? ends[0] : ends[1];
}

/** A place seen from the range's tee: metres ahead, and metres outside the strip straight out from the stands. */
export function fromRange(range: RangePlay, place: SitePoint): { readonly ahead: number; readonly aside: number } {
  const off = minus(place, range.from);
  const across = Math.abs(off.x * range.towards.y - off.y * range.towards.x);
  return { ahead: dot(off, range.towards), aside: Math.max(0, across - range.halfWidth) };
}
