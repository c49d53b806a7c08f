import type { ShotFan } from '@loopwright/analysis';
import type { SitePoint } from '@loopwright/model';
import { toSheetLine } from './site-transform.ts';

/** Straight pieces of the far edge. */
const PIECES = 16;

/** The outline of a fan in sheet units: its place, then the far edge from left to right. */
export function fanOutline({ from, towards, reach, halfAngleDegrees }: ShotFan): number[] {
  const half = (halfAngleDegrees * Math.PI) / 180;
  const edge = Array.from({ length: PIECES + 1 }, (_, piece): SitePoint => {
    const angle = half - (2 * half * piece) / PIECES;
    const [sine, cosine] = [Math.sin(angle), Math.cos(angle)];
    return {
      x: from.x + reach * (towards.x * cosine - towards.y * sine),
      y: from.y + reach * (towards.x * sine + towards.y * cosine),
    };
  });
  return toSheetLine([from, ...edge]);
}
