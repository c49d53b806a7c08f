import type { Sex } from '../figures.ts';
import type { ParTable } from './par-table.ts';

/**
 * The pars that a length allows: two in an overlap of the table, one elsewhere, ascending.
 *
 * @param length  in the table's own unit; rounded to a whole one first, as a hole is measured
 * Source: Rules of Handicapping, Appendix F. Holds below 610 m (2,000 ft) above sea level.
 */
export function parsByLength(length: number, sex: Sex, table: ParTable): readonly number[] {
  const whole = Math.round(length);
  return table[sex]
    .filter(({ least, most }) => whole >= least && (most === undefined || whole <= most))
    .map(({ par }) => par);
}

/**
 * One par for a length where the designer set none: in an overlap the lower one up to its middle, then the higher.
 *
 * The Appendix leaves the choice to how the hole is played; the middle is common practice, no source.
 */
export function likelyPar(length: number, sex: Sex, table: ParTable): number {
  const [lower, higher] = parsByLength(length, sex, table);
  if (lower === undefined) return 0;
  if (higher === undefined) return lower;
  const from = table[sex].find(({ par }) => par === higher)?.least ?? 0;
  const to = table[sex].find(({ par }) => par === lower)?.most ?? from;
  return Math.round(length) <= (from + to) / 2 ? lower : higher;
}
