import type { Finding, FindingChange } from '@loopwright/analysis';
import { figuresOf } from '@loopwright/analysis/wording';
import { MINUS } from '../../reading/lengths.ts';
import type { Names } from '../../reading/names.ts';
import { figureWords } from '../findings/figure-words.ts';

type Wording = Pick<Names, 'length' | 'lengthChange' | 'angle' | 'number' | 'feature'>;

/** What is noticed here is that something happens at all: no measure stands beside a limit, the finding's own words do. */
const WHETHER_AT_ALL: ReadonlySet<string> = new Set([
  'walk-crosses-line-of-play',
  'walk-crosses-road',
  'walk-crosses-range',
  'walk-crosses-water',
  'walk-over-feature',
  'walk-in-fan',
  'lines-cross',
]);

/** Metres below which a distance is said by the finding's own words: 'touching', not '0 yd'. */
const NOUGHT = 0.5;

/** The signed figure beside a changed finding, and the line below it. */
export function figureChangeWords(
  { change, before, after }: Pick<FindingChange, 'change' | 'before' | 'after'>,
  names: Wording,
): { readonly tag: string; readonly below: string } {
  if (change === 'inside its limit again') {
    const was = before ? measuredWords(before, names) : '';
    return { tag: 'inside its limit', below: was && `was ${was}` };
  }
  if (change === 'gained' && !before) return { tag: 'new', below: after ? measuredWords(after, names) : '' };
  if (!before || !after) return { tag: '', below: '' };
  return {
    tag: change === 'gained' ? `now ${after.severity}` : signedWords(before, after, names),
    below: WHETHER_AT_ALL.has(after.code) ? '' : `limit ${figureWords(after.limit, after.unit, names)}`,
  };
}

function measuredWords(finding: Finding, names: Wording): string {
  const { code, measured, limit, unit } = finding;
  if (unit === 'crossings' && measured === 1) return '';
  const isMeasure = unit === 'deg' || unit === 'min' || (unit === 'm' && measured >= NOUGHT);
  if (WHETHER_AT_ALL.has(code) || !isMeasure) return figuresOf(finding, names);
  return `${figureWords(measured, unit, names)}, limit ${figureWords(limit, unit, names)}`;
}

function signedWords(before: Finding, after: Finding, names: Wording): string {
  if (after.unit === 'm') return names.lengthChange(before.measured, after.measured);
  const difference = after.measured - before.measured;
  return (difference < 0 ? MINUS : '+') + figureWords(Math.abs(difference), after.unit, names);
}
