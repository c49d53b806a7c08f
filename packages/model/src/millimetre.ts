import type { SitePoint } from './space.ts';

/** A coordinate or length to the millimetre: what is stored, and what is compared with a limit. */
export function toMillimetre(metres: number): number {
  return Math.round(metres * 1000) / 1000 + 0; // + 0: never −0, which no file keeps
}

/** A point to the millimetre. */
export function pointToMillimetre(point: SitePoint): SitePoint {
  return { x: toMillimetre(point.x), y: toMillimetre(point.y) };
}
