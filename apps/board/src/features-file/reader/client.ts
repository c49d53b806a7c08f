import type { Answer, Question } from './contract.ts';

/** What is said when the worker itself breaks, e.g. for want of memory. */
const BROKEN: Answer = {
  kind: 'unreadable',
  why: 'This file could not be read on this machine, perhaps for want of memory: nothing was changed. Cut it to the site and its surroundings and try again.',
};

type WorkerPort = Pick<Worker, 'postMessage' | 'terminate' | 'onmessage' | 'onerror'>;

/**
 * Reads a file in a worker of its own, so that a large one does not stop the page: the worker ends with it.
 *
 * @param open  makes the worker
 * @param signal  calls it off at any moment: the answer is then `undefined`
 */
export function readFeaturesWith(
  open: () => WorkerPort,
  question: Question,
  signal: AbortSignal,
): Promise<Answer | undefined> {
  return new Promise((settle) => {
    if (signal.aborted) return settle(undefined);
    const worker = open();
    const end = (answer: Answer | undefined) => {
      worker.terminate();
      settle(answer);
    };
    signal.addEventListener('abort', () => end(undefined), { once: true });
    worker.onmessage = ({ data }: MessageEvent<Answer>) => end(data);
    worker.onerror = () => end(BROKEN);
    worker.postMessage(question);
  });
}

/** The page's own worker. */
export const openFeaturesReader = () => new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' });
