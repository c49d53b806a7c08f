import { makeId } from '@loopwright/model';
import { chance } from '../instruments/chance.ts';

/** A fresh id with that first letter, from the browser's own chance. */
export function freshId(letter: string): string {
  return makeId(letter, chance);
}
