import type { TeeSet } from '@loopwright/model';
import { toMillimetre } from '@loopwright/model';
import type { HoleFigures, TotalLengths } from '../figures.ts';

/** Lengths of holes added up for each tee set, the holes' own lengths beside them: a card rounds before it sums. */
export function totalLengths(holes: readonly HoleFigures[], teeSets: readonly TeeSet[]): readonly TotalLengths[] {
  return teeSets.map(({ id }, place) => {
    const holeLengths = holes.map(({ tees }) => tees[place]?.measuredLength ?? 0);
    return { teeSet: id, measuredLength: sumOf(holeLengths), holeLengths };
  });
}

/** Pars of holes added up; an incomplete hole counts where its par is fixed. */
export function totalPar(holes: readonly HoleFigures[]): HoleFigures['par'] {
  let men = 0;
  let women = 0;
  for (const { par } of holes) {
    men += par.men;
    women += par.women;
  }
  return { men, women };
}

/** A sum to the millimetre. */
export function sumOf(lengths: readonly number[]): number {
  return toMillimetre(lengths.reduce((sum, length) => sum + length, 0));
}
