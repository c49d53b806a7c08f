import type { Finding, FindingChange } from '@loopwright/analysis';
import { MINUS } from '../../reading/lengths.ts';
import type { Names } from '../../reading/names.ts';
import { figureWords } from '../findings/figure-words.ts';

type Wording = Pick<Names, 'length' | 'angle'>;

/** The signed figure beside a changed finding, and the line below it. */
export function figureChangeWords(
  { change, before, after }: Pick<FindingChange, 'change' | 'before' | 'after'>,
  names: Wording,
): { readonly tag: string; readonly below: string } {
  if (change === 'inside its limit again') {
    return { tag: 'inside its limit', below: before ? `was ${measuredWords(before, names)}` : '' };
  }
  if (change === 'gained' && !before) return { tag: 'new', below: after ? measuredWords(after, names) : '' };
  if (!before || !after) return { tag: '', below: '' };
  return {
    tag: change === 'gained' ? `now ${after.severity}` : signedWords(before, after, names),
    below: `limit ${figureWords(after.limit, after.unit, names)}`,
  };
}

function measuredWords({ measured, limit, unit }: Finding, names: Wording): string {
  return `${figureWords(measured, unit, names)}, limit ${figureWords(limit, unit, names)}`;
}

function signedWords(before: Finding, after: Finding, names: Wording): string {
  const difference = after.measured - before.measured;
  return (difference < 0 ? MINUS : '+') + figureWords(Math.abs(difference), after.unit, names);
}
