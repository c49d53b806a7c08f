import { isFields, parseEach, parseNumber, parseText } from '@loopwright/model';
import { readKept, writeKept } from '../../live/kept.ts';
import { LEG, MOST_LEGS } from './rod-legs.ts';

/** A rod with a name, kept on this machine for all boards. */
export interface KeptRod {
  readonly name: string;
  /** Metres, from the tee. */
  readonly legs: readonly number[];
}

/** Rods kept at once, and letters of a name. */
export const MOST_RODS = 20;
const NAME_LETTERS = 40;

/** The rods kept here; what cannot be read is none. */
export function readRods(): readonly KeptRod[] {
  return parseRods(readKept('rods'));
}

/** Keeps these rods, in this order. */
export function writeRods(rods: readonly KeptRod[]): 'kept' | 'not kept' {
  return writeKept('rods', JSON.stringify(rods.slice(0, MOST_RODS)));
}

/** The list with this rod in it: in place of one of that name, else at its end; the oldest goes when there are too many. */
export function withRod(rods: readonly KeptRod[], rod: KeptRod): readonly KeptRod[] {
  const name = rod.name.trim().slice(0, NAME_LETTERS);
  if (!name) return rods;
  const named = { ...rod, name };
  const others = rods.filter((each) => each.name !== name);
  const all = others.length < rods.length ? rods.map((each) => (each.name === name ? named : each)) : [...rods, named];
  return all.slice(-MOST_RODS);
}

/** What this machine kept is read like anything else from outside. */
export function parseRods(kept: string | undefined): readonly KeptRod[] {
  try {
    return parseEach(JSON.parse(kept ?? '[]'), MOST_RODS, parseRod) ?? [];
  } catch (error) {
    if (!(error instanceof SyntaxError)) throw error;
    return []; // somebody else's words under our name, or cut off
  }
}

function parseRod(value: unknown): KeptRod | undefined {
  if (!isFields(value)) return undefined;
  const name = parseText(value.name, NAME_LETTERS);
  const legs = parseEach(value.legs, MOST_LEGS, (leg) => parseNumber(leg, LEG.least, LEG.most));
  return name && legs && legs.length > 0 ? { name, legs } : undefined;
}
