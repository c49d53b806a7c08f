import type { Analysis, LoopFigures, RoundFigures } from '@loopwright/analysis';
import type { Routing } from '@loopwright/model';
import type { Change, Reading } from '../../board/parts.ts';
import { cardTotal, grouped, signedFigure } from '../../reading/lengths.ts';

/** A figure and how it changed; the sign stands beside the value, empty when nothing did. */
export interface Changed {
  readonly figure: string;
  readonly change: string;
  /** Only where one way is better: more walking is worse. */
  readonly sense: 'better' | 'worse' | 'neither';
}

export interface TotalsRow {
  readonly key: string;
  readonly name: string;
  readonly kind: 'loop' | 'round';
  readonly par: Changed;
  readonly length: Changed;
  readonly walk: Changed;
}

type Totals = LoopFigures | RoundFigures;

/** Loops and rounds with what the change did to each: sums of what beads and thread show, so that the table adds up. */
export function toTotals(
  routing: Routing,
  analysis: Analysis,
  change: Change | undefined,
  reading: Reading,
): readonly TotalsRow[] {
  const loopsBefore = new Map(change?.before.loops.map((figures) => [figures.loop, figures]));
  const roundsBefore = new Map(change?.before.rounds.map((figures) => [figures.round, figures]));
  const name = new Map([...routing.loops, ...routing.rounds].map((each) => [each.id, each.name]));
  return [
    ...analysis.loops.map((now) => toRow(now, loopsBefore.get(now.loop), now.loop, 'loop', name, reading)),
    ...analysis.rounds.map((now) => toRow(now, roundsBefore.get(now.round), now.round, 'round', name, reading)),
  ];
}

function toRow(
  now: Totals,
  before: Totals | undefined,
  id: string,
  kind: TotalsRow['kind'],
  names: ReadonlyMap<string, string>,
  reading: Reading,
): TotalsRow {
  const was = before ?? now;
  const [length, lengthBefore] = [lengthOf(now, reading), lengthOf(was, reading)];
  const [walk, walkBefore] = [cardTotal(now.walkLengths, reading.units), cardTotal(was.walkLengths, reading.units)];
  return {
    key: `${kind} ${id}`,
    name: names.get(id) ?? id,
    kind,
    par: { figure: String(now.par.men), change: signedFigure(was.par.men, now.par.men), sense: 'neither' },
    length: { figure: grouped(length), change: signedFigure(lengthBefore, length), sense: 'neither' },
    walk: { figure: grouped(walk), change: signedFigure(walkBefore, walk), sense: senseOf(walkBefore, walk) },
  };
}

function senseOf(before: number, after: number): Changed['sense'] {
  if (after === before) return 'neither';
  return after < before ? 'better' : 'worse';
}

/** The card's total of the tee set in use. */
function lengthOf({ lengths }: Totals, { teeSet, units }: Reading): number {
  const column = lengths.find((each) => each.teeSet === teeSet) ?? lengths[0];
  return column ? cardTotal(column.holeLengths, units) : 0;
}
