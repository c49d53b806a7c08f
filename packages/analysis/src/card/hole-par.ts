import type { Hole, ParChoice } from '@loopwright/model';
import type { HoleFigures, Sex } from '../figures.ts';
import { sexOf } from './model-player.ts';
import { likelyPar, parsByLength } from './par-by-length.ts';
import { PAR_TABLE_METRES } from './par-table.ts';
import type { TeeLine } from './tees.ts';

/**
 * Par of a hole and the pars its length allows, for men and for women: by the longest tee made for a man's or a
 * woman's play, else by the longest of all. The plan is metric, so the table in metres is the one that counts.
 */
export function holePar(hole: Hole, tees: readonly TeeLine[]): Pick<HoleFigures, 'par' | 'parsByLength'> {
  const men = lengthFor('men', tees);
  const women = lengthFor('women', tees);
  return {
    par: { men: parOf(hole.par.men, men, 'men'), women: parOf(hole.par.women, women, 'women') },
    parsByLength: {
      men: parsByLength(men, 'men', PAR_TABLE_METRES),
      women: parsByLength(women, 'women', PAR_TABLE_METRES),
    },
  };
}

function lengthFor(sex: Sex, tees: readonly TeeLine[]): number {
  return (tees.find(({ player }) => sexOf(player) === sex) ?? tees[0])?.measuredLength ?? 0;
}

function parOf(choice: ParChoice, length: number, sex: Sex): number {
  return choice === 'by length' ? likelyPar(length, sex, PAR_TABLE_METRES) : choice;
}

/** A fixed par still counts on a hole that is incomplete; one by length is not known yet: 0. */
export function parWithoutLength(hole: Hole): Pick<HoleFigures, 'par' | 'parsByLength'> {
  const known = (choice: ParChoice) => (choice === 'by length' ? 0 : choice);
  return {
    par: { men: known(hole.par.men), women: known(hole.par.women) },
    parsByLength: { men: [], women: [] },
  };
}
