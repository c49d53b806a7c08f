import { cardLength, type LengthUnit, LIMITS } from '@loopwright/model';
import { fromField } from '../../reading/lengths.ts';

/** As many legs as a hole has: one more than its turns. */
export const MOST_LEGS = LIMITS.turnPointsPerHole + 1;
/** Metres of one leg. */
export const LEG = { least: 10, most: 600 };
/** A full drive and a mid iron: what a long par 4 asks of a good player. Common practice, no source; changed at will. */
export const FIRST_LEGS: readonly number[] = [265, 140];

/** Legs as they are typed: '265 + 140', in the reader's unit. Metres, or what is wrong with them. */
export function parseLegs(
  typed: string,
  units: LengthUnit,
): { readonly kind: 'legs'; readonly legs: readonly number[] } | { readonly kind: 'wrong'; readonly why: string } {
  const parts = typed.slice(0, 80).split('+');
  if (parts.length > MOST_LEGS) return { kind: 'wrong', why: `A rod has ${MOST_LEGS} legs at most.` };
  const figures = parts.map((part) => (/^\s*\d+(\.\d+)?\s*$/.test(part) ? Number(part) : Number.NaN));
  const legs = figures.map((figure) => fromField(figure, units));
  if (legs.some((leg) => !isLeg(leg))) {
    const [least, most] = [cardLength(LEG.least, units), cardLength(LEG.most, units)];
    return { kind: 'wrong', why: `Type legs of ${least} to ${most}, e.g. 265 + 140.` };
  }
  return { kind: 'legs', legs };
}

/** Whether a leg can be one: not a slip of the hand, nor longer than any shots together. */
export function isLeg(metres: number): boolean {
  return metres >= LEG.least && metres <= LEG.most;
}

/** '290 + 153': as they are typed, in the reader's unit. */
export function legsField(legs: readonly number[], units: LengthUnit): string {
  return legs.map((leg) => cardLength(leg, units)).join(' + ');
}
