import type { Analysis, LoopFigures } from '@loopwright/analysis';
import { type LoopId, loopsOf, numberHoles, type RoundId, type Routing } from '@loopwright/model';
import type { Change, Reading } from '../board/parts.ts';
import { type BadgeLine, toBadge } from '../drawing/badge-view.ts';
import { cardTotal, grouped, signedFigure, unitSymbol } from '../reading/lengths.ts';
import type { Names } from '../reading/names.ts';
import { heldWords } from './bead-words.ts';
import type { Held } from './use-bead-hand.ts';

/** One figure before the beads in hand were taken up, and as it would be. */
export interface PreviewRow {
  readonly key: string;
  readonly what: string;
  readonly before: string;
  readonly after: string;
  /** '−33'; empty where it stays. */
  readonly change: string;
}

/** What putting the beads in hand down here would do. */
export interface HandPreview {
  /** 'Hole 6 becomes 9'. */
  readonly title: string;
  readonly unit: string;
  readonly rows: readonly PreviewRow[];
  /** Worst finding gained, worst one lost. */
  readonly worst: readonly BadgeLine[];
  readonly said: string;
}

interface PreviewSource {
  readonly held: Held;
  /** As it would be. */
  readonly routing: Routing;
  /** Mine in progress; absent where the beads would lie where they were. */
  readonly change: Change | undefined;
  readonly analysis: Analysis;
  /** The round whose walks and nines are told; the first one unless chosen. */
  readonly round: RoundId | undefined;
  readonly reading: Reading;
  readonly findingsShown: boolean;
}

/** Holes change numbers with the move: what they went by before it, and what they go by with it. */
interface PreviewNames {
  readonly before: Names;
  readonly now: Names;
}

/** Walks and nines before and after, and the worst finding that came and went, for the beads in hand. */
export function toHandPreview(source: PreviewSource, names: PreviewNames): HandPreview {
  const { held, change, analysis, reading, findingsShown } = source;
  const before = change?.before ?? analysis;
  const rows = [walkRow(source, before), ...nineRows(source, before)];
  const worst = change && findingsShown ? toBadge(change, names.now) : [];
  const title = titleOf(held, source.routing, names.before);
  const told = rows.filter((row) => row.change !== '').map((row) => `${row.what} ${row.before}, now ${row.after}`);
  return {
    title,
    unit: unitSymbol(reading.units),
    rows,
    worst,
    said: change ? [title, ...told, ...worst.map(({ text }) => text)].join('. ') : '',
  };
}

function titleOf({ hole, holes, place, routing: was, swapWith }: Held, routing: Routing, names: Names): string {
  const what = heldWords(holes, names);
  if (swapWith !== undefined) return `${what} changes places with ${names.number(swapWith)}`;
  if (place.in === 'tray') return `${what} out of the round`;
  const [before, after] = [numberHoles(was).get(hole), numberHoles(routing).get(hole)];
  if (before === after) return `${what}, where ${holes.length === 1 ? 'it was' : 'they were'}`;
  if (holes.length > 1) {
    const [first, last] = [holes[0], holes.at(-1)].map((each) => numberHoles(routing).get(each ?? hole) ?? '–');
    return `${what} become ${first} to ${last}`;
  }
  return `${what} becomes ${after ?? '–'}`;
}

function walkRow({ analysis, round, reading }: PreviewSource, before: Analysis): PreviewRow {
  const walks = (from: Analysis) => {
    const figures = from.rounds.find((each) => each.round === round) ?? from.rounds[0];
    const lengths = figures?.walkLengths ?? from.loops.flatMap(({ walkLengths }) => walkLengths);
    return cardTotal(lengths, reading.units);
  };
  return row('walks', 'Walks', walks(before), walks(analysis));
}

/** Each loop of the round with par and length: their balance. */
function nineRows(source: PreviewSource, before: Analysis): readonly PreviewRow[] {
  const { analysis, routing, round, reading } = source;
  const played = routing.rounds.find(({ id }) => id === round) ?? routing.rounds[0];
  const loops = played ? loopsOf(routing, played) : routing.loops;
  return loops.flatMap(({ id, name }) => {
    const [was, is] = [loopOf(before, id), loopOf(analysis, id)];
    if (!is) return [];
    const length = row(id, name, lengthOf(was ?? is, reading), lengthOf(is, reading));
    const par = (figures: LoopFigures, words: string) => `par ${figures.par.men} · ${words}`;
    return [{ ...length, before: par(was ?? is, length.before), after: par(is, length.after) }];
  });
}

const loopOf = ({ loops }: Analysis, loop: LoopId) => loops.find((each) => each.loop === loop);

function lengthOf({ lengths }: LoopFigures, { teeSet, units }: Reading): number {
  const column = lengths.find((each) => each.teeSet === teeSet) ?? lengths[0];
  return cardTotal(column?.holeLengths ?? [], units);
}

function row(key: string, what: string, before: number, after: number): PreviewRow {
  return { key, what, before: grouped(before), after: grouped(after), change: signedFigure(before, after) };
}
