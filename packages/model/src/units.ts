/** International yard and foot, exact by definition (1959 agreement). */
export const METRES_PER_YARD = 0.9144;
export const METRES_PER_FOOT = 0.3048;

export type LengthUnit = 'yards' | 'metres';

/** Metres as yards, unrounded. Only views, reports and importers call this: inside, everything is SI. */
export function yardsFrom(metres: number): number {
  return metres / METRES_PER_YARD;
}

/** Yards as metres. */
export function metresFromYards(yards: number): number {
  return yards * METRES_PER_YARD;
}

/**
 * A length as a card prints it: a whole number of the unit, halves rounded up.
 *
 * A card's totals are sums of these, never a rounded sum.
 */
export function cardLength(metres: number, unit: LengthUnit): number {
  return Math.round(unit === 'yards' ? yardsFrom(metres) : metres);
}
