import type { Round, TeeSet } from '@loopwright/model';
import { toMillimetre } from '@loopwright/model';
import type { HoleFigures, LengthRating, RoundFigures, Sex, TotalLengths, WalkFigures } from '../figures.ts';
import { walkingSpeed } from '../walk/walking-speed.ts';
import { lengthRating } from './length-rating.ts';
import { playedLength, roseOf } from './rose.ts';
import { sumOf, totalLengths, totalPar } from './totals.ts';

/** The formulas of the length rating are for this many holes. */
const RATED_HOLES = 18;

const SEXES: readonly Sex[] = ['men', 'women'];

/**
 * Totals of a round: what is played and what is walked.
 *
 * On foot counts every hole from its longest tee along the line of play, and every walk of the round in straight
 * lines by its waypoints; nobody's search for a ball. Walking the holes is timed on the level.
 *
 * @param walks  the walks of the round, between loops too
 */
export function roundFigures(
  round: Round,
  holes: readonly HoleFigures[],
  walks: readonly WalkFigures[],
  teeSets: readonly TeeSet[],
): RoundFigures {
  const lengths = totalLengths(holes, teeSets);
  const playedLengths = holes.map(playedLength);
  const walkLengths = walks.map(({ distance }) => distance);
  const [played, walk] = [sumOf(playedLengths), sumOf(walkLengths)];
  const walkTime = sumOf(walks.map(({ time }) => time));
  return {
    round: round.id,
    holes: holes.map(({ id }) => id),
    par: totalPar(holes),
    lengths,
    walk,
    walkTime,
    walkLengths,
    playedLengths,
    onFoot: toMillimetre(played + walk),
    timeOnFoot: toMillimetre(played / walkingSpeed(0) + walkTime),
    rose: roseOf(holes),
    lengthRatings: isRated(holes) ? ratingsOf(lengths) : [],
  };
}

function isRated(holes: readonly HoleFigures[]): boolean {
  return holes.length === RATED_HOLES && holes.every(({ missing }) => missing === undefined);
}

function ratingsOf(lengths: readonly TotalLengths[]): readonly LengthRating[] {
  return lengths.flatMap(({ teeSet, measuredLength }) =>
    SEXES.flatMap((sex) => {
      const rating = lengthRating(measuredLength, sex);
      return rating ? [{ teeSet, sex, ...rating }] : [];
    }),
  );
}
