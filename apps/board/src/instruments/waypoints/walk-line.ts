import { type Analysis, greenEdge } from '@loopwright/analysis';
import { closestOnPolyline, distanceBetween } from '@loopwright/geometry';
import { type Green, type HoleId, holeOf, type Routing, type SitePoint } from '@loopwright/model';

/** A walk that can be led: one that leaves a green. */
export interface WalkToLead {
  readonly hole: HoleId;
  readonly green: Green;
  /** The tee or the apron it leads to. */
  readonly end: SitePoint;
  readonly waypoints: readonly SitePoint[];
}

/** A waypoint that is only shown yet: the plan that is seen holds it already. */
export interface ShownWaypoint {
  readonly hole: HoleId;
  readonly at: SitePoint;
}

/**
 * The walk that passes nearest to a place, as it is written. Walks from a base have no hole to keep their waypoints, and
 * are not led.
 */
export function walkNear(
  routing: Routing,
  analysis: Analysis,
  at: SitePoint,
  shown?: ShownWaypoint,
): WalkToLead | undefined {
  let best: { readonly walk: WalkToLead; readonly distance: number } | undefined;
  for (const figures of analysis.walks) {
    const hole = 'hole' in figures.from ? holeOf(routing, figures.from.hole) : undefined;
    const [green, end] = [hole?.green, figures.path.at(-1)];
    if (!hole || !green || !end) continue;
    const waypoints =
      shown?.hole === hole.id ? hole.waypoints.filter((place) => !isSamePlace(place, shown.at)) : hole.waypoints;
    const walk = { hole: hole.id, green, end, waypoints };
    const { distance } = closestOnPolyline(at, lineOf(walk));
    if (!best || distance < best.distance) best = { walk, distance };
  }
  return best?.walk;
}

const isSamePlace = (one: SitePoint, other: SitePoint) => one.x === other.x && one.y === other.y;

/** From the green's edge by the waypoints to the tee, as the analysis walks it. */
export function lineOf({ green, end, waypoints }: WalkToLead): readonly SitePoint[] {
  return [greenEdge(green, waypoints[0] ?? end), ...waypoints, end];
}

/** The waypoints with one more, in the leg of the walk it is nearest to. */
export function ledThrough(walk: WalkToLead, at: SitePoint): readonly SitePoint[] {
  const { leg } = closestOnPolyline(at, lineOf(walk));
  return [...walk.waypoints.slice(0, leg), at, ...walk.waypoints.slice(leg)];
}

/** The waypoint of any walk nearest to a place, within reach. */
export function waypointNear(
  routing: Routing,
  at: SitePoint,
  reach: number,
): { readonly hole: HoleId; readonly index: number; readonly waypoints: readonly SitePoint[] } | undefined {
  let best: { readonly hole: HoleId; readonly index: number; readonly distance: number } | undefined;
  for (const { id, seat, waypoints } of routing.holes) {
    if (seat.in !== 'loop') continue;
    for (const [index, place] of waypoints.entries()) {
      const distance = distanceBetween(place, at);
      if (distance <= reach && (!best || distance < best.distance)) best = { hole: id, index, distance };
    }
  }
  const hole = best && holeOf(routing, best.hole);
  return best && hole ? { hole: best.hole, index: best.index, waypoints: hole.waypoints } : undefined;
}
