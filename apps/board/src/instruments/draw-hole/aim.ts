import { distanceBetween, plus, polylineLength, scaled, unitVector } from '@loopwright/geometry';
import type { Hole, Routing, Settings, SiteMark, SitePoint } from '@loopwright/model';
import type { Bench, Snapped, SnapWishes } from '../instrument.ts';
import { type DrawnHole, isLastPoint } from './drawn-hole.ts';

/** A length that was typed and waits for its direction. */
export interface TypedLength {
  readonly of: 'leg' | 'whole';
  readonly metres: number;
}

/** What the next point of a hole may be pulled to. */
export function wishesFor(
  drawn: DrawnHole,
  next: 'turn' | 'end',
  green: { readonly at: SitePoint; readonly words: string } | undefined,
  settings: Settings,
): SnapWishes {
  const { points, first } = drawn;
  const [before, from] = [points.at(-2), points.at(-1)];
  const end = first === 'tee' ? 'green' : 'tee';
  if (!from) {
    const ring = green && {
      centre: green.at,
      radius: settings['tee-from-green'],
      because: `a short walk from ${green.words}`,
    };
    return { for: first, ...(ring && first === 'tee' ? { rings: [ring] } : {}) };
  }
  const isEnd = next === 'end' || isLastPoint(drawn);
  return {
    from,
    along: polylineLength(points),
    for: isEnd ? end : `turn or ${end}`,
    ...(before ? { before } : {}),
  };
}

/** Where the next point lies for a pointer: pulled by guides, or as far as was typed in the pointer's direction. */
export function aimed(drawn: DrawnHole, snapped: Snapped, typed: TypedLength | undefined, words: string): Snapped {
  const from = drawn.points.at(-1);
  const towards = from && unitVector(from, snapped.at);
  if (!typed || !towards) return snapped;
  const length = typed.of === 'leg' ? typed.metres : typed.metres - polylineLength(drawn.points);
  return { at: plus(from, scaled(towards, length)), because: words };
}

/** Whether a point lies where only the other end can: on a green or a green site, drawn from the tee. */
export function endsHere(drawn: DrawnHole, at: SitePoint, marks: readonly SiteMark[], routing: Routing): boolean {
  if (drawn.points.length === 0) return false;
  const site = drawn.first === 'tee' ? 'green site' : 'tee site';
  const isHere = (place: SitePoint | undefined) => place !== undefined && distanceBetween(place, at) < SAME;
  const places = ({ id, green, tees }: Hole) =>
    id === drawn.hole ? [] : drawn.first === 'tee' ? [green?.centre] : Object.values(tees);
  return (
    marks.some((mark) => mark.kind === site && isHere(mark.at)) ||
    routing.holes.some((hole) => hole.seat.in !== 'removed' && places(hole).some(isHere))
  );
}

/** Metres within which two places are the same: the plan keeps millimetres. */
const SAME = 0.002;

/** What a bench answers as the green that is walked from to the tee of a new hole. */
export function greenBefore(bench: Bench, after: string | undefined): SitePoint | undefined {
  return bench.routing().holes.find(({ id }) => id === after)?.green?.centre;
}
