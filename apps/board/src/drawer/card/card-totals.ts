import type { TotalLengths } from '@loopwright/analysis';
import type { LengthUnit } from '@loopwright/model';
import { cardTotal, grouped } from '../../reading/lengths.ts';
import type { CardCell } from './card-view.ts';

/** A line of totals: each column sums its holes as the card prints them. */
export function totalFigures(lengths: readonly TotalLengths[], units: LengthUnit): readonly CardCell[] {
  return lengths.map(({ teeSet, holeLengths }) => ({
    teeSet,
    figure: grouped(cardTotal(holeLengths, units)),
    proposed: false,
  }));
}
