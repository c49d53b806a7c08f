import type { SitePoint } from '@loopwright/model';

const MILLIMETRES = 1000;

/** Half up in size, the same on both sides of zero, so that turning back is exact. */
function whole(value: number): number {
  return Math.sign(value) * Math.round(Math.abs(value));
}

/** Direction from one point to another, of length 1; `undefined` when they are the same. */
function direction(from: SitePoint, to: SitePoint): SitePoint | undefined {
  const x = to.x - from.x;
  const y = to.y - from.y;
  const length = Math.sqrt(x * x + y * y);
  return length > 0 ? { x: x / length, y: y / length } : undefined;
}

/** A point as seen from a teeing ground, and the direction of play from there. */
export interface Outlook {
  readonly at: SitePoint;
  /** Where play goes first. */
  readonly towards: SitePoint;
}

/**
 * A tee beside another, carried to the place from which the hole is played the other way: as far ahead of the rear tee
 * and as far aside as before, seen along the new line.
 *
 * Turning is done on whole millimetres by three shears, each of which can be taken back exactly; turning from `after` to
 * `before` therefore gives the very point one started from. Beyond a right angle the half turn is taken first, since
 * shears grow large there. Uses + − × ÷ √ only, so that every engine agrees.
 * Source: A. Paeth, "A Fast Algorithm for General Raster Rotation", Graphics Interface 1986, for the three shears.
 */
export function turnedSite(point: SitePoint, before: Outlook, after: Outlook): SitePoint {
  const from = direction(before.at, before.towards);
  const to = direction(after.at, after.towards);
  let cosine = from && to ? from.x * to.x + from.y * to.y : -1;
  let sine = from && to ? from.x * to.y - from.y * to.x : 0;
  let x = whole((point.x - before.at.x) * MILLIMETRES);
  let y = whole((point.y - before.at.y) * MILLIMETRES);
  if (cosine < 0) {
    cosine = -cosine;
    sine = -sine;
    x = -x;
    y = -y;
  }
  const shear = sine / (1 + cosine);
  x -= whole(shear * y);
  y += whole(sine * x);
  x -= whole(shear * y);
  return {
    x: whole(after.at.x * MILLIMETRES + x) / MILLIMETRES,
    y: whole(after.at.y * MILLIMETRES + y) / MILLIMETRES,
  };
}
