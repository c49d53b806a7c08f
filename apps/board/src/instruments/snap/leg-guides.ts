import { closestOnPolyline, distanceBetween, polylineLength, turnedLeft, unitVector } from '@loopwright/geometry';
import type { HoleId, SitePoint } from '@loopwright/model';
import type { SnapWishes } from '../instrument.ts';
import { type Guide, lineGuide, ringGuide } from './guide.ts';

/** A hole that is there already, from its longest tee. */
export interface LineOfPlay {
  readonly hole: HoleId;
  readonly points: readonly SitePoint[];
}

interface LegWords {
  number(hole: HoleId): string;
  length(metres: number): string;
}

/** Metres: a line of play further off than this is not beside. */
const BESIDE = 200;
/** How many holes beside a leg lend their length. */
const MOST_BESIDE = 3;

/**
 * What pulls at the end of a leg: the drive's length from the tee, straight on, square, as long as the leg before or a
 * hole beside it, parallel to the nearest line of play.
 *
 * @param drive  metres from the tee at which turn points are drawn
 */
export function legGuides(
  wishes: SnapWishes,
  {
    drive,
    lines,
    at,
    words,
  }: {
    readonly drive: number;
    readonly lines: readonly LineOfPlay[];
    readonly at: SitePoint;
    readonly words: LegWords;
  },
): readonly Guide[] {
  const { from, before } = wishes;
  if (!from) return [];
  const guides: Guide[] = [];
  // From the tee to its first turn; drawn back from the green, from the first turn to the tee.
  const isDrive = wishes.for.includes('tee') ? before !== undefined : wishes.for.includes('turn') && !before;
  if (isDrive) guides.push(ringGuide(from, drive, look(`on the drive: ${words.length(drive)}`, 60, 1)));
  const onward = before && unitVector(before, from);
  if (before && onward) {
    const leg = distanceBetween(before, from);
    guides.push(
      lineGuide(from, onward, 'ray', look('straight on', 50, 0.9)),
      lineGuide(from, turnedLeft(onward), 'both ways', look('square to the leg before', 48, 0.9)),
      ringGuide(from, leg, look(`as long as the leg before: ${words.length(leg)}`, 30, 0.6)),
    );
  }
  return [...guides, ...besideGuides(wishes, from, lines, at, words)];
}

const look = (because: string, strength: number, reach: number) => ({ because, strength, reach });

function besideGuides(
  wishes: SnapWishes,
  from: SitePoint,
  lines: readonly LineOfPlay[],
  at: SitePoint,
  words: LegWords,
): readonly Guide[] {
  const near = lines
    .filter(({ points }) => points.length > 1)
    .map((line) => ({ line, closest: closestOnPolyline(at, line.points) }))
    .filter(({ closest }) => closest.distance < BESIDE)
    .sort((a, b) => a.closest.distance - b.closest.distance);
  const guides: Guide[] = [];
  const [nearest] = near;
  const start = nearest?.line.points[nearest.closest.leg];
  const end = nearest?.line.points[nearest.closest.leg + 1];
  const towards = start && end && unitVector(start, end);
  if (nearest && towards) {
    const because = `parallel to ${words.number(nearest.line.hole)}`;
    guides.push(lineGuide(from, towards, 'both ways', look(because, 26, 0.6)));
  }
  if (!wishes.for.includes('green') && !wishes.for.includes('tee')) return guides;
  for (const { line } of near.slice(0, MOST_BESIDE)) {
    const length = polylineLength(line.points);
    const left = length - (wishes.along ?? 0);
    const because = `as long as ${words.number(line.hole)}: ${words.length(length)}`;
    if (left > 0) guides.push(ringGuide(from, left, look(because, 28, 0.6)));
  }
  return guides;
}
