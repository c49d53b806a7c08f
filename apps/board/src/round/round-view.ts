import type { Analysis, LoopFigures, Severity, TotalLengths } from '@loopwright/analysis';
import type { Person } from '@loopwright/document';
import type { Hole, HoleId, Loop, LoopId, RoundId, Routing, TeeSetId, Verdict } from '@loopwright/model';
import { holeOf, loopsOf } from '@loopwright/model';
import type { Change, Consequences, Reading } from '../board/parts.ts';
import { bearingDegrees, compassWord } from '../reading/directions.ts';
import { cardTotal, grouped, lengthChange, lengthFigure, unitSymbol } from '../reading/lengths.ts';
import { type Names, namesOf } from '../reading/names.ts';
import { teeOf } from '../reading/tee-in-use.ts';
import { type ThreadView, threadsOf } from './thread-view.ts';
import { worstByHole, worstByWalk } from './worst-findings.ts';

/** One hole on the string. Plain words and figures, ready to be shown. */
export interface BeadView {
  readonly hole: HoleId;
  /** '6', or what a spare hole goes by. */
  readonly number: string;
  /** On its disc, as on the drawing: '6', or its place in the tray, 'S1'. */
  readonly disc: string;
  readonly name: string;
  readonly par: string;
  readonly length: string;
  /** '+37' while a change is shown, else empty. */
  readonly change: string;
  /** Degrees clockwise from up; absent on an incomplete hole. */
  readonly arrow: number | undefined;
  readonly verdict: Verdict;
  readonly worst: Severity | undefined;
  /** Others who have it selected, the first one's ink and all their names. */
  readonly heldBy: { readonly ink: number; readonly names: string } | undefined;
  /** Everything the bead shows, said in one sentence. */
  readonly said: string;
}

export interface LoopView {
  readonly loop: LoopId;
  readonly name: string;
  readonly base: string;
  readonly par: string;
  /** '9 holes', '3,309', '493': told where the loop is folded. */
  readonly holes: string;
  readonly length: string;
  readonly walks: string;
  readonly beads: readonly BeadView[];
  /** From the base to the first tee (under 'first'), and after each hole, as far as they are known. */
  readonly threads: ReadonlyMap<HoleId | 'first', ThreadView>;
}

export interface RoundView {
  readonly loops: readonly LoopView[];
  readonly spare: readonly BeadView[];
  readonly unit: string;
  /** 'par 71 · 6,430', of the round that is shown; empty where there is none. */
  readonly totals: string;
}

/** What the string is strung from: the state now, its reader, the findings to be seen, what changed, who is here. */
export interface RoundSource extends Consequences {
  readonly reading: Reading;
  readonly shown: Analysis['findings'];
  readonly change: Change | undefined;
  readonly people: readonly Person[];
  /** Shows the loops of that round alone, in its order; `undefined` shows all loops. */
  readonly round?: RoundId;
}

const VERDICT_SAID: Readonly<Record<Verdict, string>> = {
  keeper: ', a keeper',
  sound: ', sound',
  weak: ', weak',
  undecided: '',
};

/** The whole round as a string of beads, loop by loop, for one reader. O(holes + walks + findings). */
export function toRoundView(source: RoundSource): RoundView {
  const { plan, routing, analysis, reading } = source;
  const names = namesOf(plan, routing, reading.units);
  const worst = worstByHole(source.shown);
  const threadSource = { ...source, worstWalks: worstByWalk(source.shown) };
  const figures = new Map(analysis.loops.map((loop) => [loop.loop, loop]));
  const bead = (id: HoleId) => {
    const hole = holeOf(routing, id);
    return hole ? [toBead(hole, source, names, worst.get(id))] : [];
  };
  return {
    loops: loopsShown(routing, source.round).map((loop) => ({
      loop: loop.id,
      name: loop.name,
      base: loop.base ? names.base(loop.base) : '',
      par: String(figures.get(loop.id)?.par.men ?? 0),
      ...loopTotals(loop, figures.get(loop.id), reading),
      beads: loop.holes.flatMap(bead),
      threads: threadsOf(loop.id, threadSource, names),
    })),
    spare: routing.spare.flatMap(bead),
    unit: unitSymbol(reading.units),
    totals: roundTotals(source),
  };
}

/** The loops on the string: those of the chosen round in its order, each once; all where none is chosen. */
export function loopsShown(routing: Routing, chosen: RoundId | undefined): readonly Loop[] {
  const round = routing.rounds.find(({ id }) => id === chosen);
  return round ? [...new Set(loopsOf(routing, round))] : routing.loops;
}

function loopTotals({ holes }: Loop, figures: LoopFigures | undefined, { teeSet, units }: Reading) {
  return {
    holes: `${holes.length} ${holes.length === 1 ? 'hole' : 'holes'}`,
    length: grouped(cardTotal(lengthsFrom(figures?.lengths, teeSet), units)),
    walks: grouped(cardTotal(figures?.walkLengths ?? [], units)),
  };
}

function roundTotals({ analysis, reading, round }: RoundSource): string {
  const figures = analysis.rounds.find((each) => each.round === round) ?? analysis.rounds[0];
  if (!figures) return '';
  const length = cardTotal(lengthsFrom(figures.lengths, reading.teeSet), reading.units);
  return `par ${figures.par.men} · ${grouped(length)}`;
}

const lengthsFrom = (columns: readonly TotalLengths[] = [], teeSet: TeeSetId) =>
  (columns.find((column) => column.teeSet === teeSet) ?? columns[0])?.holeLengths ?? [];

function toBead(hole: Hole, source: RoundSource, names: Names, worst: Severity | undefined): BeadView {
  const { analysis, reading, change, people } = source;
  const figures = analysis.holes.get(hole.id);
  const tee = teeOf(figures, reading.teeSet);
  const before = teeOf(change?.before.holes.get(hole.id), reading.teeSet);
  const number = names.number(hole.id);
  const disc = discOf(hole, source.routing.spare, number);
  const of = { hole: hole.id, number, disc, name: hole.name ?? '', verdict: hole.verdict, worst };
  const heldBy = holdersOf(hole.id, people);
  if (!figures || figures.missing || !tee) {
    const said = `Hole ${number}, incomplete: no ${figures?.missing ?? 'tee'} yet`;
    return { ...of, par: '–', length: '–', change: '', arrow: undefined, heldBy, said };
  }
  const [par, length] = [String(figures.par.men), lengthFigure(tee.measuredLength, reading.units)];
  const facts = `par ${par}, ${length} ${unitSymbol(reading.units)}, playing ${compassWord(figures.bearing)}`;
  const found = worst ? `, worst finding: ${worst}` : '';
  return {
    ...of,
    par,
    length,
    change: before ? lengthChange(before.measuredLength, tee.measuredLength, reading.units) : '',
    arrow: bearingDegrees(figures.bearing),
    heldBy,
    said: `Hole ${number}, ${facts}${VERDICT_SAID[hole.verdict]}${found}${heldBy ? `, ${heldBy.names} is here` : ''}`,
  };
}

const discOf = ({ id, seat }: Hole, spare: readonly HoleId[], number: string) =>
  seat.in === 'spare' ? `S${spare.indexOf(id) + 1}` : number;

function holdersOf(hole: HoleId, people: readonly Person[]): BeadView['heldBy'] {
  const here = people.filter(({ selection }) => selection.includes(hole));
  const first = here[0];
  return first && { ink: first.ink, names: here.map(({ name }) => name).join(', ') };
}
