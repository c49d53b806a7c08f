import { type LengthUnit, METRES_PER_FOOT, METRES_PER_YARD } from '@loopwright/model';

export type KnownDistance =
  | { readonly kind: 'distance'; readonly metres: number }
  | { readonly kind: 'wrong'; readonly why: string };

const DISTANCE = /^(\d+(?:\.\d+)?)\s*(km|m|met(?:re|er)s?|y|yds?|yards?|ft|feet|foot|')?$/i;

/** Metres: longer than any picture of a site, and shorter than can be clicked. */
const LONGEST = 100_000;
const SHORTEST = 0.01;

/** Reads a distance somebody knows, e.g. '120', '120 yd', '350 ft', '1.2 km'; without a unit it is in the reader's. */
export function parseKnownDistance(typed: string, units: LengthUnit): KnownDistance {
  const words = typed.trim().slice(0, 40);
  const found = DISTANCE.exec(words);
  if (!found)
    return { kind: 'wrong', why: `'${words.slice(0, 20)}' is no distance: type 120, 120 yd, 350 ft or 1.2 km.` };
  const metres = Number(found[1]) * metresPer(found[2]?.toLowerCase(), units);
  if (metres < SHORTEST) return { kind: 'wrong', why: 'A distance of nothing gives no scale.' };
  if (metres > LONGEST) return { kind: 'wrong', why: 'That is longer than any site.' };
  return { kind: 'distance', metres };
}

function metresPer(unit: string | undefined, units: LengthUnit): number {
  if (unit === undefined) return units === 'yards' ? METRES_PER_YARD : 1;
  if (unit === 'km') return 1000;
  if (unit.startsWith('y')) return METRES_PER_YARD;
  return unit.startsWith('f') || unit === "'" ? METRES_PER_FOOT : 1;
}
