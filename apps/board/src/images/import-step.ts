import type { MapUnit } from '@loopwright/formats/image';
import { LIMITS, parseName } from '@loopwright/model';
import { shortName } from '../reading/short-name.ts';
import type { Doing } from './reader/contract.ts';
import type { UnitChoice } from './world-file-import.ts';

/** Where a picture is on its way to the board. One is on its way at a time; `waiting` further ones come after it. */
export type ImportStep =
  | { readonly at: 'idle' }
  | { readonly at: 'checking'; readonly name: string; readonly doing: Doing; readonly waiting: number }
  /** A world file says neither its unit nor its grid: somebody has to. */
  | {
      readonly at: 'asking unit';
      readonly name: string;
      readonly choices: readonly UnitChoice[];
      readonly answer: (unit: MapUnit | 'without') => void;
    }
  | {
      readonly at: 'sending';
      readonly name: string;
      readonly sent: number;
      readonly all: number;
      readonly waiting: number;
    }
  /** One sentence with what to do; the picture is kept for another try where that can help. */
  | { readonly at: 'failed'; readonly name: string; readonly why: string; readonly again: boolean };

const DOING: Readonly<Record<Doing, string>> = {
  reading: 'Reading',
  decoding: 'Checking',
  converting: 'Turning into a picture that every browser shows:',
};

/** A file's name in a line of words: whatever it is called, the line stays one that can be read. */
export const fileCalled = (name: string) => shortName(parseName(name, LIMITS.name) ?? 'the file');

/** What is going on, in words. */
export function importWords(step: Exclude<ImportStep, { at: 'idle' }>): string {
  const name = fileCalled(step.name);
  if (step.at === 'failed') return `${name}: ${step.why}`;
  if (step.at === 'asking unit') return `In what does ${name} count? It does not say, and nobody should guess.`;
  const more = step.waiting === 0 ? '' : step.waiting === 1 ? ' One more waits.' : ` ${step.waiting} more wait.`;
  if (step.at === 'checking') return `${DOING[step.doing]} ${name} …${more}`;
  return `Sending ${name}: ${megabytes(step.sent)} of ${megabytes(step.all)} MB.${more}`;
}

const megabytes = (bytes: number) => (bytes / 1_000_000).toFixed(1);

/** How much is gone, 0 to 1; `undefined` while nobody can know. */
export function shareDone(step: ImportStep): number | undefined {
  return step.at === 'sending' && step.all > 0 ? step.sent / step.all : undefined;
}
