import type { TotalLengths } from '@loopwright/analysis';
import type { LengthUnit } from '@loopwright/model';
import { cardTotal, grouped } from '../../reading/lengths.ts';

export interface CardCell {
  readonly teeSet: string;
  readonly figure: string;
  /** Ours: the designer has not placed this tee. */
  readonly proposed: boolean;
}

/** A line of totals: each column sums its holes as the card prints them. */
export function totalFigures(lengths: readonly TotalLengths[], units: LengthUnit): readonly CardCell[] {
  return lengths.map(({ teeSet, holeLengths }) => ({
    teeSet,
    figure: grouped(cardTotal(holeLengths, units)),
    proposed: false,
  }));
}
