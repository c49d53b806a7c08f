import type { LengthUnit } from '@loopwright/model';
import { METRES_PER_YARD } from '@loopwright/model';
import { grouped } from './lengths.ts';

const SQUARE_METRES_PER_HECTARE = 10_000;
const SQUARE_METRES_PER_SQUARE_YARD = METRES_PER_YARD * METRES_PER_YARD;
const SQUARE_YARDS_PER_ACRE = 4_840;

/**
 * An area for this reader: '840 m²', '1.24 ha'; '1,005 yd²', '3.06 acres'. Land is said in hectares or acres from the
 * first whole one, a green in square metres or yards.
 */
export function areaWords(squareMetres: number, units: LengthUnit): string {
  if (units === 'metres') {
    return squareMetres < SQUARE_METRES_PER_HECTARE
      ? `${grouped(squareMetres)} m²`
      : `${inHundredths(squareMetres / SQUARE_METRES_PER_HECTARE)} ha`;
  }
  const squareYards = squareMetres / SQUARE_METRES_PER_SQUARE_YARD;
  return squareYards < SQUARE_YARDS_PER_ACRE
    ? `${grouped(squareYards)} yd²`
    : `${inHundredths(squareYards / SQUARE_YARDS_PER_ACRE)} acres`;
}

function inHundredths(value: number): string {
  const hundredths = Math.round(value * 100);
  return `${grouped(Math.floor(hundredths / 100))}.${String(hundredths % 100).padStart(2, '0')}`;
}
