import { askOnce, type WorkerPort } from '../../workers/ask-once.ts';
import type { Answer, Doing, Question } from './contract.ts';

type Outcome = Exclude<Answer, { kind: 'doing' }>;

/** What came of a check; `undefined` when it was called off. */
export type Checked = Outcome | undefined;

/** What is said when the worker itself breaks, e.g. for want of memory. */
const BROKEN: Outcome = {
  kind: 'refused',
  why: 'This picture could not be read on this machine, perhaps for want of memory: save it smaller and drop it again.',
};

/**
 * Checks a picture in a worker.
 *
 * @param open  makes the worker
 * @param signal  calls it off at any moment
 */
export function checkPictureWith(
  open: () => WorkerPort,
  file: Blob,
  onDoing: (doing: Doing) => void,
  signal: AbortSignal,
): Promise<Checked> {
  const question: Question = { ask: 'check', file };
  const answerIn = (answer: Answer): Checked => {
    if (answer.kind !== 'doing') return answer;
    onDoing(answer.doing);
    return undefined;
  };
  return askOnce(open, { question, answerIn, broken: BROKEN, signal });
}

/** The page's own worker. */
export const openReader = () => new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' });
