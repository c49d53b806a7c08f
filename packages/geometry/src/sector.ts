import type { SitePoint } from '@loopwright/model';

/** A slice of a circle: `reach` from its point, so many degrees each side of `towards` (a unit vector). */
export interface Sector {
  readonly from: SitePoint;
  readonly towards: SitePoint;
  readonly reach: number;
  /** Cosine of the half angle, from `roundedCosine`. */
  readonly cosine: number;
}

/** Whether a point lies in a sector, its edges included. By dot product and √ alone. */
export function sectorContains(sector: Sector, p: SitePoint): boolean {
  const dx = p.x - sector.from.x;
  const dy = p.y - sector.from.y;
  const squared = dx * dx + dy * dy;
  if (squared > sector.reach * sector.reach) return false;
  if (squared === 0) return true;
  return dx * sector.towards.x + dy * sector.towards.y >= sector.cosine * Math.sqrt(squared);
}
