import { likelyPar, PAR_TABLE_METRES, sexOf } from '@loopwright/analysis';
import { angleBetween, bearingOf, distanceBetween, minus, polylineLength } from '@loopwright/geometry';
import { type Green, type HoleId, LIMITS, type SitePoint, type TeeSet, type TurnPointId } from '@loopwright/model';

/** The end a hole is drawn from. */
export type FirstEnd = 'tee' | 'green';

/** A hole as far as it is drawn: its points as they were pressed, from the end it was begun at. */
export interface DrawnHole {
  readonly hole: HoleId;
  readonly first: FirstEnd;
  readonly points: readonly SitePoint[];
  /** For its turn points, so that a turn keeps its id while the rest is drawn. */
  readonly turns: readonly TurnPointId[];
}

/** Metres of a new green along its line and across: some 570 m², common practice, no source. Handles change it. */
const GREEN = { length: 30, width: 24 };

/** Metres. Shorter is a slip of the hand; longer is no hole: common practice, no source. */
const SHORTEST_LEG = 10;
const LONGEST_HOLE = 1000;
/** Radians. A line that turns further goes back on itself. */
const SHARPEST_TURN = (2 * Math.PI) / 3;

/** Whether the next point must be the last: a hole has so many turns and no more. */
export function isLastPoint({ points }: DrawnHole): boolean {
  return points.length > LIMITS.turnPointsPerHole;
}

/** Why a point cannot follow, in words; `undefined` when it can. */
export function refusalOf(
  { points }: Pick<DrawnHole, 'points'>,
  at: SitePoint,
  length: (metres: number) => string,
): string | undefined {
  const [before, from] = [points.at(-2), points.at(-1)];
  if (!from) return undefined;
  if (distanceBetween(from, at) < SHORTEST_LEG) return `Too near: a leg has at least ${length(SHORTEST_LEG)}.`;
  const whole = polylineLength([...points, at]);
  if (whole > LONGEST_HOLE) return `${length(whole)} is longer than any hole: choose a nearer place.`;
  if (before && angleBetween(minus(from, before), minus(at, from)) > SHARPEST_TURN) {
    return 'The line would go back on itself: choose a place further on.';
  }
  return undefined;
}

/** What a drawn hole has, with its last point where `end` says, in the order of play. */
export interface HoleParts {
  readonly line: readonly SitePoint[];
  readonly tee?: SitePoint;
  readonly turnPoints: readonly { readonly id: TurnPointId; readonly at: SitePoint }[];
  readonly green?: Green;
}

/** @param end  the last point, where there is one: the green of a hole drawn from its tee */
export function partsOf({ first, points, turns }: DrawnHole, end: SitePoint | undefined): HoleParts {
  const [start, ...between] = points;
  const pressed = between.map((at, index) => ({ id: turns[index] ?? `t${index}`, at }));
  const turnPoints = first === 'tee' ? pressed : pressed.toReversed();
  const [tee, centre] = first === 'tee' ? [start, end] : [end, start];
  const middle = turnPoints.map(({ at }) => at);
  const line = [...(tee ? [tee] : []), ...middle, ...(centre ? [centre] : [])];
  const last = line.at(-2);
  const bearing = centre && last ? bearingOf(minus(centre, last)) : 0;
  return {
    line,
    turnPoints,
    ...(tee ? { tee } : {}),
    ...(centre ? { green: { centre, ...GREEN, bearing } } : {}),
  };
}

/** The figures that run with the pointer: metres, and par by that length for the players of the longest tee. */
export function figuresOf(
  line: readonly SitePoint[],
  teeSet: TeeSet,
): { readonly length: number; readonly par: number } {
  const length = polylineLength(line);
  return { length, par: likelyPar(length, sexOf(teeSet.player), PAR_TABLE_METRES) };
}
