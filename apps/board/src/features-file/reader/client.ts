import { askOnce, type WorkerPort } from '../../workers/ask-once.ts';
import type { Answer, Question } from './contract.ts';

/** What is said when the worker itself breaks, e.g. for want of memory. */
const BROKEN: Answer = {
  kind: 'unreadable',
  why: 'This file could not be read on this machine, perhaps for want of memory: nothing was changed. Cut it to the site and its surroundings and try again.',
};

/**
 * Reads a file of features in a worker.
 *
 * @param open  makes the worker
 * @param signal  calls it off at any moment: the answer is then `undefined`
 */
export function readFeaturesWith(
  open: () => WorkerPort,
  question: Question,
  signal: AbortSignal,
): Promise<Answer | undefined> {
  return askOnce(open, { question, answerIn: (answer: Answer) => answer, broken: BROKEN, signal });
}

/** The page's own worker. */
export const openFeaturesReader = () => new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' });
