import type { Answer, Doing, Question } from './contract.ts';

/** What came of a check; `undefined` when it was called off. */
export type Checked = Exclude<Answer, { kind: 'doing' }> | undefined;

/** What is said when the worker itself breaks, e.g. for want of memory. */
const BROKEN: Checked = {
  kind: 'refused',
  why: 'This picture could not be read on this machine, perhaps for want of memory: save it smaller and drop it again.',
};

type WorkerPort = Pick<Worker, 'postMessage' | 'terminate' | 'onmessage' | 'onerror'>;

/**
 * Checks a picture in a worker of its own: the worker ends with it, and gives back the memory it took.
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
  return new Promise((settle) => {
    if (signal.aborted) return settle(undefined);
    const worker = open();
    const end = (checked: Checked) => {
      worker.terminate();
      settle(checked);
    };
    signal.addEventListener('abort', () => end(undefined), { once: true });
    worker.onmessage = ({ data }: MessageEvent<Answer>) => {
      if (data.kind === 'doing') onDoing(data.doing);
      else end(data);
    };
    worker.onerror = () => end(BROKEN);
    const question: Question = { ask: 'check', file };
    worker.postMessage(question);
  });
}

/** The page's own worker. */
export const openReader = () => new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' });
