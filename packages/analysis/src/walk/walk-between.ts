import { dot, minus, polylineLength, unitVector } from '@loopwright/geometry';
import type { BaseId, HoleId, LoopId, SitePoint } from '@loopwright/model';
import { pointToMillimetre, toMillimetre } from '@loopwright/model';
import type { HoleFigures, WalkFigures } from '../figures.ts';
import { greenEdge } from './green-edge.ts';
import { walkingSpeed } from './walking-speed.ts';

/** One end of a walk: a hole's green or tee, or a base's apron. */
export type WalkEnd =
  | { readonly hole: HoleId; readonly figures: HoleFigures }
  | { readonly base: BaseId; readonly apron: SitePoint };

/** A walk before anything it crosses is known. */
export type WalkPath = Omit<WalkFigures, 'crossings'>;

/**
 * The walk from a green's edge, or from a base, by its waypoints to the longest tee of the next hole, or to a base.
 *
 * Horizontal and straight between its points. Climb and fall are left out: there is no ground yet.
 *
 * @param waypoints  of the hole whose green is left; none from a base
 * @returns `undefined` where an end is not there: no green or no tee
 * Source: USGA Pace Rating System: from the green's edge along the usual path to the next permanent marker.
 */
export function walkBetween(
  loop: LoopId,
  from: WalkEnd,
  to: WalkEnd,
  waypoints: readonly SitePoint[],
): WalkPath | undefined {
  const end = 'hole' in to ? to.figures.centreline[0] : to.apron;
  if (!end) return undefined;
  const start = startOf(from, waypoints[0] ?? end);
  if (!start) return undefined;
  const path = [start, ...waypoints, end];
  const distance = toMillimetre(polylineLength(path));
  return {
    key: `${idOf(from)}>${idOf(to)}`,
    loop,
    from: 'hole' in from ? { hole: from.hole } : { base: from.base },
    to: 'hole' in to ? { hole: to.hole } : { base: to.base },
    path,
    distance,
    walkBack: 'hole' in to ? walkBack(path, to.figures.centreline) : 0,
    time: toMillimetre(distance / walkingSpeed(0)),
  };
}

function startOf(from: WalkEnd, towards: SitePoint): SitePoint | undefined {
  if ('base' in from) return from.apron;
  return from.figures.green && pointToMillimetre(greenEdge(from.figures.green, towards));
}

function idOf(end: WalkEnd): string {
  return 'hole' in end ? end.hole : end.base;
}

/** Metres walked against the next line of play: what the first leg of the next hole wins back. */
function walkBack(path: readonly SitePoint[], line: readonly SitePoint[]): number {
  const [tee, next] = line;
  const ahead = tee && next && unitVector(tee, next);
  if (!ahead) return 0;
  let back = 0;
  path.forEach((to, i) => {
    const from = path[i - 1];
    if (from) back += Math.max(0, -dot(minus(to, from), ahead));
  });
  return toMillimetre(back);
}
