import type { RoundFigures } from '@loopwright/analysis';
import type { Plan } from '@loopwright/model';

export interface RatingRow {
  readonly key: string;
  readonly teeSet: string;
  readonly sex: string;
  readonly scratch: string;
  readonly bogey: string;
}

/** Stands beside every length rating. */
export const RATING_CAUTION =
  'Provisional: from length alone, before obstacles, wind, roll and height. Only a rating team of the association can rate a course.';

/** The provisional length ratings of a round, one decimal as ratings are written. */
export function toRatingRows(round: RoundFigures, plan: Plan): readonly RatingRow[] {
  const names = new Map(plan.teeSets.map(({ id, name }) => [id, name]));
  return round.lengthRatings.map(({ teeSet, sex, scratch, bogey }) => ({
    key: `${teeSet} ${sex}`,
    teeSet: names.get(teeSet) ?? '',
    sex,
    scratch: scratch.toFixed(1),
    bogey: bogey.toFixed(1),
  }));
}
