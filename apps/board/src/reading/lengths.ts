import { cardLength, type LengthUnit, metresFromYards, yardsFrom } from '@loopwright/model';

/** The short name of the reader's unit, e.g. 'yd'. */
export function unitSymbol(units: LengthUnit): 'yd' | 'm' {
  return units === 'yards' ? 'yd' : 'm';
}

/** The minus of print, not the hyphen: as wide as a plus in tabular figures. */
export const MINUS = '−';

/** A whole number with its thousands apart: 6,382. The same on every machine. */
export function grouped(value: number): string {
  const digits = String(Math.abs(Math.round(value))).replace(/\B(?=(\d{3})+$)/g, ',');
  return Math.round(value) < 0 ? MINUS + digits : digits;
}

/** A length as the card prints it, without its unit: '378'. */
export function lengthFigure(metres: number, units: LengthUnit): string {
  return grouped(cardLength(metres, units));
}

/** A length with its unit: '378 yd'. */
export function lengthWords(metres: number, units: LengthUnit): string {
  return `${lengthFigure(metres, units)} ${unitSymbol(units)}`;
}

/**
 * A card's total: every hole rounded first, then summed, as printed cards are.
 *
 * @param holeLengths  metres
 */
export function cardTotal(holeLengths: readonly number[], units: LengthUnit): number {
  return holeLengths.reduce((sum, length) => sum + cardLength(length, units), 0);
}

/** A signed whole number: '+38', '−4'; empty when the rounded figures are the same. */
export function signedFigure(before: number, after: number): string {
  const difference = Math.round(after) - Math.round(before);
  if (difference === 0) return '';
  return difference > 0 ? `+${grouped(difference)}` : grouped(difference);
}

/** How a shown length changed, in the reader's unit: the difference of what was shown and what is. */
export function lengthChange(before: number, after: number, units: LengthUnit): string {
  return signedFigure(cardLength(before, units), cardLength(after, units));
}

/** A length of a setting or coordinate in the reader's unit, to a tenth, for a field. */
export function toField(metres: number, units: LengthUnit): number {
  return Math.round((units === 'yards' ? yardsFrom(metres) : metres) * 10) / 10;
}

/** What was typed into a field, in metres to the millimetre. */
export function fromField(value: number, units: LengthUnit): number {
  return Math.round((units === 'yards' ? metresFromYards(value) : value) * 1000) / 1000;
}
