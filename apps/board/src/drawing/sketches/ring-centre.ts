import type { Analysis } from '@loopwright/analysis';
import { holeOf, type RingCentre, type Routing, type SitePoint } from '@loopwright/model';

/**
 * Where a clearance ring has its middle now: a part of a hole is followed wherever it goes.
 *
 * `undefined` when the part is not on this drawing: another routing is shown, or the hole was taken off.
 */
export function ringCentre(about: RingCentre, routing: Routing, analysis: Analysis): SitePoint | undefined {
  if ('at' in about) return about.at;
  const hole = about.routing === routing.id ? holeOf(routing, about.hole) : undefined;
  if (!hole || hole.seat.in === 'removed') return undefined;
  const { part } = about;
  if (part === 'green') return hole.green?.centre;
  if (part.startsWith('turn:')) return hole.turnPoints.find(({ id }) => part === `turn:${id}`)?.at;
  // A tee that nobody placed stands where it is proposed.
  return analysis.holes.get(hole.id)?.tees.find(({ teeSet }) => part === `tee:${teeSet}`)?.at;
}
