import type { Analysis, RoundFigures } from '@loopwright/analysis';
import type { HoleId } from '@loopwright/model';
import type { Reading } from '../../../board/parts.ts';
import { lengthFigure } from '../../../reading/lengths.ts';
import type { Names } from '../../../reading/names.ts';
import { teeOf } from '../../../reading/tee-in-use.ts';

/** One hole among those of its par. */
export interface LengthBar {
  readonly hole: HoleId;
  readonly number: string;
  readonly figure: string;
  /** Of the longest of its par, 0 to 1. */
  readonly share: number;
}

/** The holes of one par, the longest first, with their mean. */
export interface ParBars {
  readonly par: number;
  readonly mean: string;
  readonly meanShare: number;
  readonly bars: readonly LengthBar[];
}

/** How long the holes of each par are beside each other, over one round. Every bar starts at nothing, so that twice as long looks it. */
export function toParBars(analysis: Analysis, round: RoundFigures, reading: Reading, names: Names): readonly ParBars[] {
  const byPar = new Map<number, { readonly hole: HoleId; readonly length: number }[]>();
  for (const hole of round.holes) {
    const figures = analysis.holes.get(hole);
    const tee = teeOf(figures, reading.teeSet);
    if (!figures || figures.missing || !tee) continue;
    const par = figures.par.men;
    byPar.set(par, [...(byPar.get(par) ?? []), { hole, length: tee.measuredLength }]);
  }
  return [...byPar]
    .sort(([one], [other]) => one - other)
    .map(([par, holes]) => {
      const longest = Math.max(...holes.map(({ length }) => length), 1);
      const mean = holes.reduce((sum, { length }) => sum + length, 0) / holes.length;
      const bars = [...holes]
        .sort((one, other) => other.length - one.length)
        .map(({ hole, length }) => ({
          hole,
          number: names.number(hole),
          figure: lengthFigure(length, reading.units),
          share: length / longest,
        }));
      return { par, mean: lengthFigure(mean, reading.units), meanShare: mean / longest, bars };
    });
}
