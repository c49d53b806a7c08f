import {
  crossingShares,
  distanceBetween,
  pointBetween,
  roundedCosine,
  roundedSine,
  unitVector,
} from '@loopwright/geometry';
import type { Green, Ring, SitePoint } from '@loopwright/model';

/**
 * Where the edge of a green lies on the way from its centre to somewhere; that place itself when it is on the green.
 *
 * An oval unless the green has an outline; of an outline that the way leaves more than once, the last edge counts.
 */
export function greenEdge(green: Green, towards: SitePoint): SitePoint {
  const ahead = unitVector(green.centre, towards);
  if (!ahead) return towards;
  const radius = green.outline ? outlineRadius(green.outline, ahead, green) : ovalRadius(green, ahead);
  const distance = distanceBetween(green.centre, towards);
  return radius >= distance ? towards : pointBetween(green.centre, towards, radius / distance);
}

function ovalRadius({ length, width, bearing }: Green, ahead: SitePoint): number {
  const degrees = (bearing * 180) / Math.PI;
  const axis = { x: roundedSine(degrees), y: roundedCosine(degrees) };
  const along = (ahead.x * axis.x + ahead.y * axis.y) / (length / 2);
  const across = (ahead.x * axis.y - ahead.y * axis.x) / (width / 2);
  const size = Math.sqrt(along * along + across * across);
  return Number.isFinite(size) && size > 0 ? 1 / size : 0;
}

function outlineRadius(outline: Ring, ahead: SitePoint, { length, width }: Green): number {
  const far = 2 * outline.reduce((most, { x, y }) => Math.max(most, Math.abs(x) + Math.abs(y)), length + width);
  const from = { x: 0, y: 0 };
  const to = { x: ahead.x * far, y: ahead.y * far };
  let radius = 0;
  outline.forEach((a, i) => {
    const b = outline[i + 1] ?? outline[0] ?? a;
    const crossing = crossingShares(from, to, a, b);
    if (crossing) radius = Math.max(radius, crossing.first * far);
  });
  return radius;
}
