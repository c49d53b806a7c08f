import type { Finding } from '../figures.ts';
import type { FindingChange } from '../ripple/ripple.ts';
import { wordsOf } from './sentences.ts';
import { amount, capital, type ReaderNames } from './words.ts';

/**
 * What a change did to one finding, in a sentence: "Walk 6 → 7 now crosses in front of tee 7",
 * "4 and 6 no longer run one way", "Tee 7 lies in the shot fan of 4: 31 m, was 38 m".
 */
export function changeSentence(change: FindingChange, names: ReaderNames): string {
  const { before, after } = change;
  const finding = after ?? before;
  if (!finding) return '';
  if (change.change === 'inside its limit again') return clause(finding, 'no longer', names);
  if (change.change === 'gained' && (!before || before.code !== after?.code)) return clause(finding, 'now', names);
  if (!before || !after || before.code !== after.code) return clause(finding, 'now', names);
  const { who, does } = wordsOf(after);
  const was = amount(before.measured, before, names);
  return `${capital(who(after, names))} ${does(after, names)}: ${amount(after.measured, after, names)}, was ${was}`;
}

function clause(finding: Finding, when: 'now' | 'no longer', names: ReaderNames): string {
  const { who, does } = wordsOf(finding);
  return capital(said(who(finding, names), when, does(finding, names)));
}

/** 'is' and 'are' come before the adverb: "is now long", "are no longer alike". */
function said(who: string, when: 'now' | 'no longer', does: string): string {
  const toBe = /^(is|are) /.exec(does)?.[1];
  return toBe ? `${who} ${toBe} ${when} ${does.slice(toBe.length + 1)}` : `${who} ${when} ${does}`;
}
