import type { LengthUnit, SitePoint } from '@loopwright/model';
import { parseTyped } from '../typed/typed-values.ts';
import { parseLegs } from './rod-legs.ts';

export type TypedRod =
  | { readonly kind: 'bearing'; readonly way: SitePoint }
  | { readonly kind: 'legs'; readonly legs: readonly number[] }
  | { readonly kind: 'place'; readonly at: SitePoint }
  | { readonly kind: 'wrong'; readonly why: string };

/** What may be typed with a rod in the hand: '045' its bearing, '265 + 140' its legs, '120.5, 40' where it is pinned. */
export function parseTypedRod(typed: string, units: LengthUnit): TypedRod {
  const words = typed.trim();
  if (words.includes('+')) return parseLegs(words, units);
  const degrees = /^@?\s*(\d{1,3}(?:\.\d+)?)\s*°?$/.exec(words);
  if (degrees) {
    const figure = Number(degrees[1]);
    if (figure > 360) return { kind: 'wrong', why: 'A bearing goes from 0 to 360 degrees.' };
    const radians = (figure * Math.PI) / 180;
    return { kind: 'bearing', way: { x: Math.sin(radians), y: Math.cos(radians) } };
  }
  const read = parseTyped(words, units);
  if (read.kind === 'place') return read;
  return { kind: 'wrong', why: 'Type a bearing (045), legs (265 + 140) or where it is pinned (120.5, 40).' };
}
