import type { Analysis, HoleFigures } from '@loopwright/analysis';
import {
  type Hole,
  type HoleId,
  holeOf,
  type LengthUnit,
  type PartId,
  type Plan,
  type Routing,
} from '@loopwright/model';
import { compassWord } from '../../reading/directions.ts';
import { lengthWords } from '../../reading/lengths.ts';
import { namesOf, partWords } from '../../reading/names.ts';
import { placeWords } from './index-rows.ts';

/** One point of a hole: metres on the site plane, east and north. */
export interface PointRow {
  readonly part: PartId;
  readonly what: string;
  readonly east: number;
  readonly north: number;
  /** Ours until somebody moves it: the designer has not placed this tee. */
  readonly proposed: boolean;
  readonly pinned: boolean;
}

/** One hole as the table lists it. */
export interface HolePoints {
  readonly hole: HoleId;
  readonly number: string;
  readonly title: string;
  readonly summary: string;
  readonly seat: 'loop' | 'spare';
  readonly points: readonly PointRow[];
  /** What is drawn of it without being placed by anybody: where full shots from its first tee finish. */
  readonly drawn: string;
}

/** Every hole of the round, then the spare ones, with every point that can be moved: the equal of the drawing. */
export function toHolePoints(
  plan: Plan,
  routing: Routing,
  analysis: Analysis,
  units: LengthUnit,
): readonly HolePoints[] {
  const names = namesOf(plan, routing, units);
  return [...routing.loops.flatMap(({ holes }) => holes), ...routing.spare].flatMap((id) => {
    const hole = holeOf(routing, id);
    if (!hole) return [];
    const number = names.number(id);
    const figures = analysis.holes.get(id);
    const seat = hole.seat.in === 'loop' ? 'loop' : 'spare';
    return [
      {
        hole: id,
        number,
        title: seat === 'loop' ? `Hole ${number}${hole.name ? `, ${hole.name}` : ''}` : `Spare: ${number}`,
        summary: summaryOf(figures, units),
        seat,
        points: toPointRows(hole, figures, plan, number),
        drawn: landingWords(figures),
      },
    ];
  });
}

function summaryOf(figures: HoleFigures | undefined, units: LengthUnit): string {
  const tee = figures?.tees[0];
  if (!figures || figures.missing || !tee) return `no ${figures?.missing ?? 'tee'} yet`;
  return `par ${figures.par.men}, ${lengthWords(tee.measuredLength, units)}, ${compassWord(figures.bearing)}`;
}

function landingWords(figures: HoleFigures | undefined): string {
  const places = figures?.tees[0]?.landingAreas ?? [];
  if (places.length === 0) return '';
  const [shots, finish] = places.length === 1 ? ['The full shot', 'finishes'] : ['Full shots', 'finish'];
  return `${shots} from the longest tee ${finish} at ${places.map(placeWords).join('; then at ')}.`;
}

/** Every point of one hole in order of play: its tees, placed or proposed, its turn points and its green. */
export function toPointRows(
  hole: Hole,
  figures: HoleFigures | undefined,
  plan: Plan,
  number: string,
): readonly PointRow[] {
  const row = (part: PartId, at: { x: number; y: number } | undefined, proposed: boolean, nth = ''): PointRow[] => {
    if (!at) return [];
    const what = `${partWords(plan.teeSets, number, part)}${nth}`;
    return [{ part, what, east: at.x, north: at.y, proposed, pinned: hole.pinned.includes(part) }];
  };
  const tees = plan.teeSets.flatMap(({ id }) => {
    const placed = hole.tees[id];
    const proposed = figures?.tees.find((tee) => tee.teeSet === id && tee.proposed)?.at;
    return row(`tee:${id}`, placed ?? proposed, placed === undefined);
  });
  const turns = hole.turnPoints.flatMap(({ id, at }, index) =>
    row(`turn:${id}`, at, false, hole.turnPoints.length > 1 ? `, ${index + 1}` : ''),
  );
  return [...tees, ...turns, ...row('green', hole.green?.centre, false)];
}
