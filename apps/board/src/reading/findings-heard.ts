import type { FindingChange } from '@loopwright/analysis';
import { changeSentence } from '@loopwright/analysis/wording';
import type { Names } from './names.ts';

/** Findings told one by one; the rest is counted. Somebody who listens cannot skim. */
const TOLD = { gained: 2, gone: 1 } as const;
/** Letters of one finding: names of features may be long. */
const LONGEST = 160;

/**
 * Findings gained and gone, for those who listen: '2 findings gained: Tee 7 now lies in the shot fan of 4; Walk 6 → 7 is
 * now long. 1 gone: 4 and 6 no longer run one way.' The worst first, as the changes come; what eased or worsened within
 * its severity is left to the sheet. Empty when nothing came or went.
 */
export function findingsHeard(changes: readonly FindingChange[], names: Names): string {
  const gained = changes.filter(({ change }) => change === 'gained');
  const gone = changes.filter(({ change }) => change === 'inside its limit again');
  const counted = (count: number) => (count === 1 ? '1 finding' : `${count} findings`);
  const parts: string[] = [];
  if (gained.length > 0) parts.push(told(`${counted(gained.length)} gained`, gained, TOLD.gained, names));
  if (gone.length > 0) {
    const count = gained.length > 0 ? String(gone.length) : counted(gone.length);
    parts.push(told(`${count} gone`, gone, TOLD.gone, names));
  }
  return parts.join(' ');
}

function told(head: string, changes: readonly FindingChange[], most: number, names: Names): string {
  const sentences = changes.slice(0, most).map((change) => bounded(changeSentence(change, names)));
  const more = changes.length - sentences.length;
  return `${head}: ${[...sentences, ...(more > 0 ? [`and ${more} more`] : [])].join('; ')}.`;
}

function bounded(sentence: string): string {
  const letters = [...sentence];
  return letters.length <= LONGEST ? sentence : `${letters.slice(0, LONGEST - 1).join('')}…`;
}
