import type { FigureChange } from '@loopwright/analysis';
import type { Change, Reading } from '../../board/parts.ts';
import { angleWords, bearingWords } from '../../reading/directions.ts';
import { lengthChange, lengthFigure, signedFigure } from '../../reading/lengths.ts';
import type { Names } from '../../reading/names.ts';

/** One figure of a hole or walk before and after. */
export interface FigureRow {
  readonly key: string;
  readonly what: string;
  readonly before: string;
  readonly after: string;
  readonly change: string;
  readonly sense: 'better' | 'worse' | 'neither';
}

/**
 * The figures of holes and walks that differ. Loops and rounds stand in the totals, new numbers on the string of beads.
 */
export function toFigureRows(change: Change, names: Names, reading: Reading): readonly FigureRow[] {
  return change.ripple.figures.flatMap((each) => {
    const what = whatWords(each.of, names);
    if (what === undefined || each.figure === 'number') return [];
    const sense = each.better === undefined ? 'neither' : each.better ? 'better' : 'worse';
    const row = { key: `${what} ${each.figure}`, what: `${what}${FIGURE_WORDS[each.figure]}`, sense } as const;
    return [{ ...row, ...figuresOf(each, reading) }];
  });
}

const FIGURE_WORDS: Readonly<Record<FigureChange['figure'], string>> = {
  length: ', length',
  par: ', par',
  approach: ', approach',
  bearing: ', plays',
  walk: '',
  'walk-back': ', walked back',
  'on foot': ', on foot',
  number: ', number',
};

function whatWords(of: FigureChange['of'], names: Names): string | undefined {
  if (of.kind === 'hole') return `Hole ${names.number(of.hole)}`;
  if (of.kind !== 'walk') return undefined;
  const [from, to] = [of.from, of.to].map((hole) => (hole === undefined ? 'base' : names.number(hole)));
  return `Walk ${from} → ${to}`;
}

function figuresOf({ figure, before, after }: FigureChange, { units }: Reading) {
  if (figure === 'bearing') {
    const turned = Math.abs(((after - before + 3 * Math.PI) % (2 * Math.PI)) - Math.PI);
    return { before: bearingWords(before), after: bearingWords(after), change: angleWords(turned) };
  }
  if (figure === 'par' || figure === 'number') {
    return { before: String(before), after: String(after), change: signedFigure(before, after) };
  }
  return {
    before: lengthFigure(before, units),
    after: lengthFigure(after, units),
    change: lengthChange(before, after, units),
  };
}
