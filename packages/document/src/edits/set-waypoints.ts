import { LIMITS, parsePoints } from '@loopwright/model';
import type { Reading } from '../reading/reading.ts';
import type { EditNamed, EditWrites } from './edit-named.ts';
import { openHole } from './open-hole.ts';

/**
 * Leads the walk to the next tee by these points, all of them one decision; none leads it straight.
 *
 * @returns `nothing` for more points than a walk can have, or places off the site plane
 */
export function setWaypoints(edit: EditNamed<'set waypoints'>, reading: Reading): EditWrites {
  const open = openHole(reading, edit);
  if (typeof open === 'string') return open;
  const waypoints = parsePoints(edit.waypoints, LIMITS.waypointsPerHole);
  if (waypoints === undefined) return 'nothing';
  return [open.write('waypoints', waypoints.length > 0 ? waypoints : null)];
}
