import { type LengthUnit, METRES_PER_YARD, type SitePoint } from '@loopwright/model';

/** What a person may type while drawing. */
export type Typed =
  /** '380': of the next leg; '=380': of the whole hole or line. Metres. */
  | { readonly kind: 'length'; readonly of: 'leg' | 'whole'; readonly metres: number; readonly bearing?: number }
  /** '1234.5, 678.9': metres east and north on the site plane. */
  | { readonly kind: 'place'; readonly at: SitePoint }
  | { readonly kind: 'wrong'; readonly why: string };

/** How values are typed, for the words beside the field. */
export const TYPED_EXAMPLES = '380 for a leg, =380 for all of it, 380 @ 045 with a bearing, or east, north in metres';

const LENGTH = /^(=?)\s*(\d+(?:\.\d+)?)\s*(m|metres?|y|yd|yards?)?\s*(?:(?:@|at)\s*(\d+(?:\.\d+)?)\s*°?)?$/i;
const PLACE = /^\(?\s*(-?\d+(?:\.\d+)?)\s*[,;]\s*(-?\d+(?:\.\d+)?)\s*\)?$/;

/** Longer than anything drawn by hand on a site, in metres. */
const LONGEST = 100_000;
/** Metres from the site's origin, either way. */
const FURTHEST = 1_000_000;

/** Reads a typed value; a length without a unit is in the reader's. Never throws. */
export function parseTyped(text: string, units: LengthUnit): Typed {
  const words = text.trim().slice(0, 80);
  const place = PLACE.exec(words);
  if (place) return placeOf(Number(place[1]), Number(place[2]));
  const length = LENGTH.exec(words);
  if (!length)
    return { kind: 'wrong', why: `'${words.slice(0, 20)}' says no length or place. Type ${TYPED_EXAMPLES}.` };
  const [, whole, figure, unit, degrees] = length;
  const metres = Number(figure) * metresPer(unit, units);
  if (!(metres > 0)) return { kind: 'wrong', why: 'A length of nothing draws nothing.' };
  if (metres > LONGEST) return { kind: 'wrong', why: 'That is longer than any site.' };
  const of = whole === '=' ? 'whole' : 'leg';
  if (degrees === undefined) return { kind: 'length', of, metres };
  if (Number(degrees) > 360) return { kind: 'wrong', why: 'A bearing goes from 0 to 360 degrees.' };
  return { kind: 'length', of, metres, bearing: (Number(degrees) * Math.PI) / 180 };
}

function metresPer(unit: string | undefined, units: LengthUnit): number {
  const isYards = unit === undefined ? units === 'yards' : unit.toLowerCase().startsWith('y');
  return isYards ? METRES_PER_YARD : 1;
}

function placeOf(x: number, y: number): Typed {
  if (Math.abs(x) > FURTHEST || Math.abs(y) > FURTHEST) return { kind: 'wrong', why: 'That place is off any site.' };
  return { kind: 'place', at: { x, y } };
}
