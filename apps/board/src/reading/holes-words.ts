import type { HoleId, Routing } from '@loopwright/model';
import { holesInOrder } from '../tools/chosen-holes.ts';
import { holeWords, type Names } from './names.ts';

/** More than so many are counted instead of named. */
const NAMED = 8;

/** 'hole 4', 'the spare hole Old mill', 'holes 3, 4 and 7', '12 holes', 'all 18 holes'. */
export function holesWords(
  { routing, names }: { readonly routing: Routing; readonly names: Names },
  chosen: readonly HoleId[],
): string {
  const [only] = chosen;
  if (only === undefined) return 'nothing';
  if (chosen.length === 1) return holeWords(routing, names, only);
  const all = holesInOrder(routing);
  if (chosen.length > NAMED) return `${chosen.length === all.length ? 'all ' : ''}${chosen.length} holes`;
  const numbers = all.filter((hole) => chosen.includes(hole)).map(names.number);
  return `holes ${numbers.slice(0, -1).join(', ')} and ${numbers.at(-1)}`;
}
