import type { Analysis, HoleFigures } from '@loopwright/analysis';
import { distanceBetween, minus, plus, pointBetween, scaled, unitVector } from '@loopwright/geometry';
import { type Green, type Hole, LIMITS, type SitePoint, type TeeSetId } from '@loopwright/model';
import { axesOf } from './green-shapes.ts';
import type { Grip } from './grip.ts';

/** Pixels: from a part to the grip beyond it, and between two things to take hold of. */
const BEYOND = 30;
const APART = 24;
/** A leg or walk shorter than this on the screen has no grip in its middle: there is no room to take hold. */
const SHORTEST_LEG = 64;
/** Closer to the centre than this a handle of a green could not be told from the green. */
const LEAST_REACH = 24;
/** Pixels per metre below which a hole is too small to be shaped. */
const SHAPED_FROM = 0.2;
/** Where on a leg its grip may lie, best first: not under the number. */
const SHARES = [0.5, 0.38, 0.62, 0.28, 0.72];

/** What the grips of a hole are made from. */
export interface GripSource {
  readonly hole: Hole;
  readonly figures: HoleFigures;
  readonly walks: Analysis['walks'];
  /** The tee set the person reads: its tee is the one to be lengthened. */
  readonly teeSet: TeeSetId;
  /** Pixels per metre. */
  readonly scale: number;
  /** Where numbers stand. */
  readonly numbers: readonly SitePoint[];
}

/**
 * Everything to take hold of on a hole besides its parts, in the order it is wanted. A grip that would lie on a part,
 * a number or a grip before it is left out. O(grips × parts).
 */
export function gripsOf(source: GripSource): readonly Grip[] {
  const { hole, scale } = source;
  if (scale < SHAPED_FROM) return [];
  const taken: SitePoint[] = [...partPlaces(source), ...source.numbers];
  const grips: Grip[] = [];
  for (const choices of [
    ...legGrips(source),
    ...endGrips(source),
    ...greenGrips(hole.green, scale),
    ...walkGrips(source),
  ]) {
    const free = choices.find(({ at }) => taken.every((other) => areApart(at, other, APART / scale)));
    if (!free) continue;
    grips.push(free);
    taken.push(free.at);
  }
  return grips;
}

/** Asked for every place against every other in each picture of a drag: most are told apart by one coordinate. */
const areApart = (one: SitePoint, other: SitePoint, least: number): boolean =>
  Math.abs(one.x - other.x) >= least || Math.abs(one.y - other.y) >= least || distanceBetween(one, other) >= least;

/** The places one grip may have, best first. */
type Choices = readonly Grip[];

const partPlaces = ({ hole, figures }: GripSource): readonly SitePoint[] => [
  ...figures.tees.map(({ at }) => at),
  ...hole.turnPoints.map(({ at }) => at),
];

/** Tee, turn points and green centre as the designer put them, passed turn points too. */
function pointsInPlay({ hole, figures }: GripSource): readonly SitePoint[] {
  const tee = figures.tees[0]?.at;
  const turns = hole.turnPoints.map(({ at }) => at);
  return [...(tee ? [tee] : []), ...turns, ...(hole.green ? [hole.green.centre] : [])];
}

function legGrips(source: GripSource): readonly Choices[] {
  if (source.hole.turnPoints.length >= LIMITS.turnPointsPerHole || source.figures.missing) return [];
  return eachLeg(pointsInPlay(source), source.scale).map(({ from, to, index }) =>
    SHARES.map((share): Grip => ({ kind: 'leg', place: index, at: pointBetween(from, to, share) })),
  );
}

/** Beyond the tee that is read, and beyond the green. */
function endGrips({ hole, teeSet, figures, scale }: GripSource): readonly Choices[] {
  const { green } = hole;
  const tee = hole.tees[teeSet] ? teeSet : figures.tees.find(({ proposed }) => !proposed)?.teeSet;
  const from = tee === undefined ? undefined : hole.tees[tee];
  const next = hole.turnPoints[0]?.at ?? green?.centre;
  const before = hole.turnPoints.at(-1)?.at ?? from;
  const back = from && next && unitVector(next, from);
  const on = green && before && unitVector(before, green.centre);
  const steps = [BEYOND, BEYOND + APART, BEYOND + 2 * APART];
  const choices: Choices[] = [];
  if (from && back && tee !== undefined) {
    choices.push(
      steps.map(
        (step): Grip => ({ kind: 'beyond', end: `tee:${tee}`, out: back, at: plus(from, scaled(back, step / scale)) }),
      ),
    );
  }
  if (green && on) {
    const edge = Math.max(green.length, green.width) / 2;
    choices.push(
      steps.map(
        (step): Grip => ({
          kind: 'beyond',
          end: 'green',
          out: on,
          at: plus(green.centre, scaled(on, edge + step / scale)),
        }),
      ),
    );
  }
  return choices;
}

/** Length and width on the edge, both sides possible; the bearing outside, at the other end of the axis. */
function greenGrips(green: Green | undefined, scale: number): readonly Choices[] {
  if (!green) return [];
  const { along, across } = axesOf(green.bearing);
  const least = LEAST_REACH / scale;
  const edge = (kind: 'green length' | 'green width', axis: SitePoint, half: number): Choices =>
    [axis, scaled(axis, -1)].map((out) => ({ kind, out, at: plus(green.centre, scaled(out, Math.max(half, least))) }));
  const outside = Math.max(green.length / 2, least) + BEYOND / scale;
  const ends = [scaled(along, -1), along];
  return [
    edge('green length', along, green.length / 2),
    edge('green width', across, green.width / 2),
    ends.map((out): Grip => ({ kind: 'green bearing', at: plus(green.centre, scaled(out, outside)) })),
  ];
}

function walkGrips({ hole, walks, scale }: GripSource): readonly Choices[] {
  const path = walks.find(({ from }) => 'hole' in from && from.hole === hole.id)?.path ?? [];
  const points = hole.waypoints.map((at, index): Choices => [{ kind: 'waypoint', at, index }]);
  // The path goes by every waypoint; while it does not, it is of another moment.
  if (hole.waypoints.length >= LIMITS.waypointsPerHole || path.length !== hole.waypoints.length + 2) return points;
  const legs = eachLeg(path, scale).map(({ from, to, index }) =>
    SHARES.map((share): Grip => ({ kind: 'walk leg', index, at: pointBetween(from, to, share) })),
  );
  return [...points, ...legs];
}

/** The legs long enough on the screen to be taken hold of. */
function eachLeg(points: readonly SitePoint[], scale: number) {
  return points.flatMap((to, at) => {
    const from = points[at - 1];
    const long = from !== undefined && distanceBetween(minus(to, from), { x: 0, y: 0 }) * scale >= SHORTEST_LEG;
    return from && long ? [{ from, to, index: at - 1 }] : [];
  });
}
