import { type Hole, parsePoint, type SitePoint, type TeeSet } from '@loopwright/model';
import type { Reading } from '../reading/reading.ts';
import type { EditNamed, EditWrites } from './edit-named.ts';
import { openHole } from './open-hole.ts';
import { rearTee } from './rear-tee.ts';

/**
 * Lengthens a hole along its own line: a tee goes back from the next point of its line of play, the green on from the
 * last one. A negative `by` shortens, but never as far as that point.
 *
 * @returns `gone` when the tee set is not there any more; `nothing` when that end was not placed by hand, when the hole
 *   has no line yet, or when the end would come to that point or off the site plane
 */
export function lengthen(edit: EditNamed<'lengthen'>, reading: Reading): EditWrites {
  const open = openHole(reading, edit);
  if (typeof open === 'string') return open;
  const { hole } = open;
  const { teeSets } = reading.plan;
  const id = edit.end.slice(edit.end.indexOf(':') + 1);
  if (edit.end !== 'green' && !teeSets.some((teeSet) => teeSet.id === id)) return 'gone';
  const line = edit.end === 'green' ? lastLeg(hole, teeSets) : legFrom(hole, hole.tees[id], teeSets);
  const to = line && further(line, edit.by);
  return to === undefined ? 'nothing' : [open.write(edit.end, { x: to.x, y: to.y })];
}

/** An end of a hole and the point of the line of play next to it. */
interface Leg {
  readonly end: SitePoint;
  readonly next: SitePoint;
}

function further({ end, next }: Leg, by: number): SitePoint | undefined {
  const [dx, dy] = [end.x - next.x, end.y - next.y];
  const length = Math.sqrt(dx * dx + dy * dy);
  if (!(length > 0) || !(length + by > 0)) return undefined;
  const share = by / length;
  const to = parsePoint({ x: end.x + dx * share, y: end.y + dy * share });
  // To the millimetre it may have come to that very point.
  return to && (to.x !== next.x || to.y !== next.y) ? to : undefined;
}

function lastLeg(hole: Hole, teeSets: readonly TeeSet[]): Leg | undefined {
  const next = hole.turnPoints.at(-1)?.at ?? rearTee(hole, teeSets)?.at;
  return hole.green && next && { end: hole.green.centre, next };
}

/** A forward tee may stand beyond a turn: its line goes on to the point after the leg it stands beside. */
function legFrom(hole: Hole, tee: SitePoint | undefined, teeSets: readonly TeeSet[]): Leg | undefined {
  const rear = rearTee(hole, teeSets);
  if (!tee || !rear) return undefined;
  const ahead = [...hole.turnPoints.map(({ at }) => at), ...(hole.green ? [hole.green.centre] : [])];
  let best = Number.POSITIVE_INFINITY;
  let next = ahead[0];
  let from = rear.at;
  for (const [index, to] of ahead.entries()) {
    const { share, apart } = nearestOn(tee, from, to);
    // Level with the end of a leg is beyond it.
    if (apart < best) next = share === 1 ? (ahead[index + 1] ?? to) : to;
    best = Math.min(best, apart);
    from = to;
  }
  return next && { end: tee, next };
}

/** Where a point lies beside a leg: how far along it (0 to 1), and the square of its distance from it. */
function nearestOn(point: SitePoint, from: SitePoint, to: SitePoint) {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const square = dx * dx + dy * dy;
  const along = square > 0 ? ((point.x - from.x) * dx + (point.y - from.y) * dy) / square : 0;
  const share = Math.min(Math.max(along, 0), 1);
  const [x, y] = [from.x + share * dx - point.x, from.y + share * dy - point.y];
  return { share, apart: x * x + y * y };
}
