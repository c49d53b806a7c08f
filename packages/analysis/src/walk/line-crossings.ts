import {
  type Box,
  boundsOf,
  boxesMeet,
  distanceBetween,
  grown,
  plus,
  polylineCrossings,
  scaled,
  unitVector,
} from '@loopwright/geometry';
import type { Settings, SitePoint } from '@loopwright/model';
import { pointToMillimetre, toMillimetre } from '@loopwright/model';
import { playedLength } from '../card/rose.ts';
import type { CrossingPlace, HoleFigures, WalkCrossing } from '../figures.ts';
import type { WalkPath } from './walk-between.ts';

/** How far behind a tee or past a green's centre a way counts as passing behind it, metres: common practice, no source. */
const BEHIND = 40;

/** A walk touches its own green's line where it starts and the next line where it ends; so near is no crossing, metres. */
const AT_THE_END = 0.5;

/** A line of play made ready to be crossed: lengthened behind its tee and past its green. */
export interface CrossedLine {
  readonly figures: HoleFigures;
  readonly line: readonly SitePoint[];
  readonly length: number;
  readonly box: Box;
  readonly landings: readonly SitePoint[];
}

/** Makes a hole's line ready; `undefined` while the hole is incomplete or has no length. */
export function crossedLine(figures: HoleFigures): CrossedLine | undefined {
  const line = figures.centreline;
  const tee = line[0];
  const green = line[line.length - 1];
  const first = tee && line[1] && unitVector(line[1], tee);
  const last = green && line[line.length - 2];
  const onward = last && unitVector(last, green);
  if (!tee || !green || !first || !onward) return undefined;
  const long = [plus(tee, scaled(first, BEHIND)), ...line, plus(green, scaled(onward, BEHIND))];
  const start = figures.tees.find(({ at }) => at.x === tee.x && at.y === tee.y);
  return {
    figures,
    line: long,
    length: playedLength(figures),
    box: boundsOf(long),
    landings: start?.landingAreas ?? [],
  };
}

/** Where a walk crosses lines of play, in the order walked. Box tests keep the far ones cheap. */
export function lineCrossings(
  walk: WalkPath,
  lines: readonly CrossedLine[],
  settings: Settings,
): readonly WalkCrossing[] {
  if (walk.distance <= 0) return [];
  const box = grown(boundsOf(walk.path), 0.001);
  const found: { readonly on: number; readonly crossing: WalkCrossing }[] = [];
  for (const line of lines) {
    if (!boxesMeet(box, line.box)) continue;
    for (const { at, alongFirst, alongSecond } of polylineCrossings(walk.path, line.line)) {
      if (isAnEnd(walk, line, alongFirst)) continue;
      const ahead = toMillimetre(alongSecond - BEHIND);
      const what = {
        kind: 'line of play',
        hole: line.figures.id,
        where: placeOf(at, ahead, line, settings),
        ahead,
      } as const;
      found.push({ on: alongFirst, crossing: { at: pointToMillimetre(at), what } });
    }
  }
  return found.sort((a, b) => a.on - b.on).map(({ crossing }) => crossing);
}

function isAnEnd({ from, to, distance }: WalkPath, { figures }: CrossedLine, on: number): boolean {
  if ('hole' in to && to.hole === figures.id && on >= distance - AT_THE_END) return true;
  return 'hole' in from && from.hole === figures.id && on <= AT_THE_END;
}

/** In what part of a hole a place on its line lies: the tee's stretch first, then the green's, then the landing areas. */
function placeOf(at: SitePoint, ahead: number, { length, landings }: CrossedLine, settings: Settings): CrossingPlace {
  if (ahead < 0 || ahead > length) return 'behind';
  if (ahead <= settings['walk-crossing-ahead']) return 'ahead of the tee';
  if (length - ahead <= settings['walk-crossing-at-green']) return 'short of the green';
  const isLanding = landings.some((landing) => distanceBetween(landing, at) <= settings['walk-crossing-landing']);
  return isLanding ? 'at a landing area' : 'in play';
}

/** Metres from a crossing on to the green along the line of play. */
export function leftToGreen(figures: HoleFigures, ahead: number): number {
  return toMillimetre(playedLength(figures) - ahead);
}
