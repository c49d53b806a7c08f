import { type Hole, type PartId, parsePoint, type SitePoint } from '@loopwright/model';
import type { Reading } from '../reading/reading.ts';
import type { EditNamed, EditWrites } from './edit-named.ts';
import { valueOfPart } from './move-part.ts';
import { openHole } from './open-hole.ts';

/** The parts of a hole that lie somewhere, with their places. */
function placedParts(hole: Hole): readonly { readonly part: PartId; readonly at: SitePoint }[] {
  return [
    ...Object.entries(hole.tees).map(([teeSet, at]): { part: PartId; at: SitePoint } => ({
      part: `tee:${teeSet}`,
      at,
    })),
    ...hole.turnPoints.map(({ id, at }): { part: PartId; at: SitePoint } => ({ part: `turn:${id}`, at })),
    ...(hole.green ? [{ part: 'green' as const, at: hole.green.centre }] : []),
  ];
}

/**
 * Shifts a whole hole: its tees, turn points, green and the waypoints of the walk after it. Each part stays a key of
 * its own, so that somebody who drags one of them at the same time keeps that.
 *
 * @returns `nothing` when a part would leave the site plane
 */
export function moveHole(edit: EditNamed<'move hole'>, reading: Reading): EditWrites {
  const open = openHole(reading, edit);
  if (typeof open === 'string') return open;
  const { routing, hole } = open;
  const shifted = (at: SitePoint) => parsePoint({ x: at.x + edit.by.x, y: at.y + edit.by.y });
  const writes = [];
  for (const { part, at } of placedParts(hole)) {
    const to = shifted(at);
    if (to === undefined) return 'nothing';
    writes.push(open.write(part, valueOfPart(reading, routing.id, hole.id, part, to)));
  }
  if (hole.waypoints.length > 0) {
    const waypoints = hole.waypoints.flatMap((at) => shifted(at) ?? []);
    if (waypoints.length < hole.waypoints.length) return 'nothing';
    writes.push(open.write('waypoints', waypoints));
  }
  return writes;
}
