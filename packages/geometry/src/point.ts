import type { SitePoint } from '@loopwright/model';

/** Straight distance. By √ alone: `Math.hypot` differs between engines. */
export function distanceBetween(a: SitePoint, b: SitePoint): number {
  const dx = b.x - a.x;
  const dy = b.y - a.y;
  return Math.sqrt(dx * dx + dy * dy);
}

/** The point a share `t` of the way from `a` to `b`; 0 gives `a`, 1 gives `b` exactly. */
export function pointBetween(a: SitePoint, b: SitePoint, t: number): SitePoint {
  return { x: a.x * (1 - t) + b.x * t, y: a.y * (1 - t) + b.y * t };
}

/** `a` moved by `b`. */
export function plus(a: SitePoint, b: SitePoint): SitePoint {
  return { x: a.x + b.x, y: a.y + b.y };
}

/** The way from `b` to `a`. */
export function minus(a: SitePoint, b: SitePoint): SitePoint {
  return { x: a.x - b.x, y: a.y - b.y };
}

/** `v` made `factor` times as long. */
export function scaled(v: SitePoint, factor: number): SitePoint {
  return { x: v.x * factor, y: v.y * factor };
}

/** Of unit vectors, the cosine of the angle between them. */
export function dot(a: SitePoint, b: SitePoint): number {
  return a.x * b.x + a.y * b.y;
}

/** Positive when `b` lies to the left of `a` (counter-clockwise, y up). */
export function cross(a: SitePoint, b: SitePoint): number {
  return a.x * b.y - a.y * b.x;
}

/** The direction from one point to another, of length 1; `undefined` when they coincide. */
export function unitVector(from: SitePoint, to: SitePoint): SitePoint | undefined {
  const length = distanceBetween(from, to);
  if (!(length > 0)) return undefined;
  return { x: (to.x - from.x) / length, y: (to.y - from.y) / length };
}

/** `v` turned a quarter to the left. */
export function turnedLeft(v: SitePoint): SitePoint {
  return { x: -v.y, y: v.x };
}
