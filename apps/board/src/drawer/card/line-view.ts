import type { Analysis, HoleFigures, WalkFigures } from '@loopwright/analysis';
import type { HoleId, Plan, Routing } from '@loopwright/model';
import type { Reading } from '../../board/parts.ts';
import { angleWords, bearingWords, compassLetters } from '../../reading/directions.ts';
import { lengthFigure } from '../../reading/lengths.ts';
import { namesOf } from '../../reading/names.ts';
import { teeOf } from '../../reading/tee-in-use.ts';

/** How one hole plays from the tee in use: its direction, bends, the shot left into the green, the walk on. */
export interface LineRow {
  readonly hole: HoleId;
  readonly number: string;
  /** '045° NE'. */
  readonly direction: string;
  /** 'left 31°', several with commas; 'straight'. */
  readonly bends: string;
  readonly approach: string;
  readonly club: string;
  readonly walk: string;
  readonly back: string;
}

export interface LineView {
  readonly player: string;
  readonly teeSet: string;
  readonly rows: readonly LineRow[];
}

/** The line of play of every hole in the round, for the reader's tee set and its model player. */
export function toLineView(plan: Plan, routing: Routing, analysis: Analysis, reading: Reading): LineView {
  const names = namesOf(plan, routing, reading.units);
  const set = plan.teeSets.find(({ id }) => id === reading.teeSet) ?? plan.teeSets[0];
  const leaving = new Map(analysis.walks.flatMap((walk) => ('hole' in walk.from ? [[walk.from.hole, walk]] : [])));
  const rows = routing.loops
    .flatMap((loop) => loop.holes)
    .flatMap((hole) => {
      const figures = analysis.holes.get(hole);
      return figures ? [toLine(figures, names.number(hole), leaving.get(hole), reading)] : [];
    });
  return { player: set?.player ?? '', teeSet: set?.name ?? '', rows };
}

function toLine(figures: HoleFigures, number: string, walk: WalkFigures | undefined, reading: Reading): LineRow {
  const tee = teeOf(figures, reading.teeSet);
  const bends = figures.bends.map(({ side, angle }) => `${side} ${angleWords(angle)}`).join(', ');
  const whole = figures.missing === undefined && tee !== undefined;
  return {
    hole: figures.id,
    number,
    direction: whole ? `${bearingWords(figures.bearing)} ${compassLetters(figures.bearing)}` : '–',
    bends: whole ? bends || 'straight' : '–',
    approach: whole && tee.approach !== undefined ? lengthFigure(tee.approach, reading.units) : '–',
    club: (whole && tee.approachClub) || '–',
    walk: walk ? lengthFigure(walk.distance, reading.units) : '–',
    back: walk && walk.walkBack > 0.5 ? lengthFigure(walk.walkBack, reading.units) : '',
  };
}
