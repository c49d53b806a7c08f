import type { Sex } from '../figures.ts';

/** Lengths that allow one par, whole yards or metres, both ends included; no `most` for the longest par. */
export interface ParRange {
  readonly par: number;
  readonly least: number;
  readonly most?: number;
}

export type ParTable = Readonly<Record<Sex, readonly ParRange[]>>;

/**
 * Rules of Handicapping, Appendix F (R&A and USGA), the column in metres. It is published for itself and is not
 * a conversion of the yards: 260 yd is 237.7 m, the column says 240.
 */
export const PAR_TABLE_METRES: ParTable = {
  men: [
    { par: 3, least: 0, most: 240 },
    { par: 4, least: 220, most: 450 },
    { par: 5, least: 410, most: 650 },
    { par: 6, least: 610 },
  ],
  women: [
    { par: 3, least: 0, most: 200 },
    { par: 4, least: 180, most: 380 },
    { par: 5, least: 340, most: 550 },
    { par: 6, least: 520 },
  ],
};

/** The same Appendix, the column in yards. */
export const PAR_TABLE_YARDS: ParTable = {
  men: [
    { par: 3, least: 0, most: 260 },
    { par: 4, least: 240, most: 490 },
    { par: 5, least: 450, most: 710 },
    { par: 6, least: 670 },
  ],
  women: [
    { par: 3, least: 0, most: 220 },
    { par: 4, least: 200, most: 420 },
    { par: 5, least: 370, most: 600 },
    { par: 6, least: 570 },
  ],
};
