import type { SitePoint } from '@loopwright/model';

/** An upright box on the site plane. */
export interface Box {
  readonly minX: number;
  readonly minY: number;
  readonly maxX: number;
  readonly maxY: number;
}

/**
 * The box around some points.
 *
 * @throws RangeError for no points: the caller's bug
 */
export function boundsOf(points: readonly SitePoint[]): Box {
  const first = points[0];
  if (!first) throw new RangeError('boundsOf: needs at least one point');
  let minX = first.x;
  let maxX = first.x;
  let minY = first.y;
  let maxY = first.y;
  for (const { x, y } of points) {
    if (x < minX) minX = x;
    if (x > maxX) maxX = x;
    if (y < minY) minY = y;
    if (y > maxY) maxY = y;
  }
  return { minX, minY, maxX, maxY };
}

/** A box made larger on every side. */
export function grown(box: Box, by: number): Box {
  return { minX: box.minX - by, minY: box.minY - by, maxX: box.maxX + by, maxY: box.maxY + by };
}

/** Whether two boxes share a point; cheap, to pass over pairs that are far apart. */
export function boxesMeet(a: Box, b: Box): boolean {
  return a.minX <= b.maxX && b.minX <= a.maxX && a.minY <= b.maxY && b.minY <= a.maxY;
}
