import { closestOnPolyline, polylineLength } from '@loopwright/geometry';
import type { SitePoint } from '@loopwright/model';

/**
 * The line of play from one tee: tee, the turn points still ahead, green centre.
 *
 * A turn point is passed when the tee stands level with it or beyond, along the hole's main line.
 *
 * @param main  the line from the longest tee, every turn point on it
 * Source: CONGU Unified Handicapping System, Appendix A: along the designed line of play, separately for each tee.
 */
export function playLine(tee: SitePoint, main: readonly SitePoint[]): readonly SitePoint[] {
  const level = closestOnPolyline(tee, main).along;
  const ahead = main.slice(1).filter((_, i) => {
    const isGreen = i === main.length - 2;
    return isGreen || polylineLength(main.slice(0, i + 2)) > level;
  });
  return [tee, ...ahead];
}
