import type { Analysis, HoleFigures, LoopFigures, RoundFigures, Sex } from '@loopwright/analysis';
import {
  type Hole,
  type HoleId,
  holeOf,
  type LengthUnit,
  type Plan,
  type RoundId,
  type Routing,
} from '@loopwright/model';
import { cardTotal, grouped, lengthFigure, unitSymbol } from '../../reading/lengths.ts';
import { namesOf } from '../../reading/names.ts';
import { timeWords } from '../../reading/times.ts';
import { type CardDifference, differencesOf } from './card-differences.ts';
import { type CardCell, totalFigures } from './card-totals.ts';

/** One column of the card: a tee set, and the player it is for. */
export interface CardColumn {
  readonly teeSet: string;
  readonly name: string;
  readonly player: string;
}

/** A par as the card shows it: chosen by the designer, or following the length. */
export interface CardPar {
  /** '4'; '–' on an incomplete hole. */
  readonly figure: string;
  readonly chosen: 'by hand' | 'by length';
}

export interface CardRow {
  readonly hole: HoleId;
  readonly number: string;
  readonly men: CardPar;
  readonly women: CardPar;
  /** Both pars where the length lies in an overlap of the table. */
  readonly parWords: string;
  readonly lengths: readonly CardCell[];
}

export interface CardTotal {
  readonly key: string;
  readonly name: string;
  readonly men: string;
  readonly women: string;
  readonly lengths: readonly CardCell[];
}

export interface CardLoop {
  readonly loop: string;
  readonly name: string;
  readonly rows: readonly CardRow[];
  readonly total: CardTotal | undefined;
}

export interface CardRound {
  readonly total: CardTotal;
  readonly walked: string;
  readonly onFoot: string;
  readonly time: string;
}

export interface CardView {
  readonly columns: readonly CardColumn[];
  readonly unit: string;
  readonly loops: readonly CardLoop[];
  readonly rounds: readonly CardRound[];
  readonly differences: readonly CardDifference[];
  readonly incomplete: string;
}

/**
 * The printed card: every length rounded first, then summed.
 *
 * @param round  whose totals are compared; the first one unless chosen
 */
export function toCardView(
  plan: Plan,
  routing: Routing,
  analysis: Analysis,
  units: LengthUnit,
  round: RoundId | undefined = analysis.rounds[0]?.round,
): CardView {
  const names = namesOf(plan, routing, units);
  const rowOf = (hole: HoleId) => {
    const [figures, decided] = [analysis.holes.get(hole), holeOf(routing, hole)];
    return figures && decided ? [toRow(figures, decided, names.number(hole), plan, units)] : [];
  };
  const totals = new Map(analysis.loops.map((loop) => [loop.loop, loop]));
  const open = routing.loops.flatMap((loop) => loop.holes).filter((hole) => analysis.holes.get(hole)?.missing);
  return {
    columns: plan.teeSets.map(({ id, name, player }) => ({ teeSet: id, name, player })),
    unit: unitSymbol(units),
    loops: routing.loops.map((loop) => ({
      loop: loop.id,
      name: loop.name,
      rows: loop.holes.flatMap(rowOf),
      total: totalOf(totals.get(loop.id), loop.id, loop.name, units),
    })),
    rounds: analysis.rounds.flatMap((figures) => roundOf(figures, routing, units)),
    differences: differencesOf(routing, analysis, units, round),
    incomplete: open.map((hole) => names.number(hole)).join(', '),
  };
}

function toRow(figures: HoleFigures, decided: Hole, number: string, plan: Plan, units: LengthUnit): CardRow {
  const cells = plan.teeSets.map(({ id }) => {
    const tee = figures.missing ? undefined : figures.tees.find(({ teeSet }) => teeSet === id);
    const figure = tee ? lengthFigure(tee.measuredLength, units) : '–';
    return { teeSet: id, figure, proposed: tee?.proposed ?? false };
  });
  const { men, women } = figures.parsByLength;
  const either = [...new Set([...men, ...women])].length > 1 || men.length > 1;
  return {
    hole: figures.id,
    number,
    men: parOf(figures, decided, 'men'),
    women: parOf(figures, decided, 'women'),
    parWords: either ? `By length: men ${men.join(' or ')}, women ${women.join(' or ')}` : '',
    lengths: cells,
  };
}

function parOf({ missing, par }: HoleFigures, decided: Hole, sex: Sex): CardPar {
  return {
    figure: missing ? '–' : String(par[sex]),
    chosen: decided.par[sex] === 'by length' ? 'by length' : 'by hand',
  };
}

function totalOf(
  figures: LoopFigures | RoundFigures | undefined,
  key: string,
  name: string,
  units: LengthUnit,
): CardTotal | undefined {
  if (!figures) return undefined;
  return {
    key,
    name,
    men: String(figures.par.men),
    women: String(figures.par.women),
    lengths: totalFigures(figures.lengths, units),
  };
}

function roundOf(figures: RoundFigures, routing: Routing, units: LengthUnit): readonly CardRound[] {
  const name = routing.rounds.find(({ id }) => id === figures.round)?.name ?? 'Round';
  const total = totalOf(figures, figures.round, name, units);
  if (!total) return [];
  const walked = cardTotal(figures.walkLengths, units);
  const onFoot = walked + cardTotal(figures.playedLengths, units);
  return [{ total, walked: grouped(walked), onFoot: grouped(onFoot), time: timeWords(figures.timeOnFoot) }];
}
