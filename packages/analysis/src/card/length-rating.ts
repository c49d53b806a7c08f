import { yardsFrom } from '@loopwright/model';
import type { Sex } from '../figures.ts';

interface Formula {
  readonly per: number;
  readonly plus: number;
}

/**
 * Strokes = effective playing length in yards ÷ `per` + `plus`, 18 holes.
 *
 * Source: scratch men, myscorecard.com "Slope & Rating II" (second hand); the other three from memory, agreeing
 * with two public repositories. None was seen in a primary source.
 */
const FORMULAS: Readonly<Record<Sex, { readonly scratch: Formula; readonly bogey: Formula }>> = {
  men: { scratch: { per: 220, plus: 40.9 }, bogey: { per: 160, plus: 50.7 } },
  women: { scratch: { per: 180, plus: 40.1 }, bogey: { per: 120, plus: 51.3 } },
};

/** Slope = factor × (bogey rating − course rating). Source: Golf Association of Michigan; the women's 4.24 also mwcseniorgolf.com. */
const SLOPE_FACTOR: Readonly<Record<Sex, number>> = { men: 5.381, women: 4.24 };

/**
 * Length put in the formula for a short course, yards. Each line meets the plain length where it stops applying.
 *
 * Source: USGA Course Rating manual and guide 2012–2015, introduction slides (Golf.se).
 */
const SHORT_COURSE: Readonly<Record<Sex, { readonly factor: number; readonly plus: number }>> = {
  men: { factor: 0.633, plus: 1760 },
  women: { factor: 0.7, plus: 1080 },
};

/** The shortest 18 holes that the correction for short courses is published for, yards. */
const SHORTEST_YARDS = 3000;

/** The length that counts for the rating of a short course; a longer one counts as it is. Yards. */
export function lengthForRating(yards: number, sex: Sex): number {
  const { factor, plus } = SHORT_COURSE[sex];
  return Math.max(yards, factor * yards + plus);
}

/**
 * The part of a course rating that follows from length alone; raters add the obstacles. Provisional: the length is
 * measured, not corrected for roll, climb, bends, wind or altitude.
 *
 * @param metres  measured length of 18 holes
 * @returns strokes to 1e-4; `undefined` for a course shorter than any the formulas are published for
 */
export function lengthRating(
  metres: number,
  sex: Sex,
): { readonly scratch: number; readonly bogey: number } | undefined {
  const yards = yardsFrom(metres);
  if (yards < SHORTEST_YARDS) return undefined;
  const length = lengthForRating(yards, sex);
  const { scratch, bogey } = FORMULAS[sex];
  return { scratch: strokes(length, scratch), bogey: strokes(length, bogey) };
}

function strokes(yards: number, { per, plus }: Formula): number {
  return Math.round((yards / per + plus) * 1e4) / 1e4;
}

/** The slope that two ratings make, unrounded and without its limits of 55 and 155. Not shown to clients. */
export function slopeFrom(ratings: { readonly scratch: number; readonly bogey: number }, sex: Sex): number {
  return SLOPE_FACTOR[sex] * (ratings.bogey - ratings.scratch);
}
