import type { WorkerPort } from '../../workers/ask-once.ts';
import type { Answer, Numbered, Question } from './contract.ts';

/** What is said when the worker itself breaks, e.g. for want of memory. */
export const BROKEN: Answer = {
  kind: 'unreadable',
  why: 'This file could not be read on this machine, perhaps for want of memory: nothing was changed. Cut it to the course and its surroundings and drop it again.',
};

/** Asks about files in a worker, so that a large one does not stop the page. */
export interface CourseReader {
  ask(question: Question): Promise<Answer>;
  close(): void;
}

/** @param open  makes the worker; called at the first question and again after one broke */
export function courseReader(open: () => WorkerPort): CourseReader {
  let worker: WorkerPort | undefined;
  let asked = 0;
  const waiting = new Map<number, (answer: Answer) => void>();
  const settleAll = () => {
    for (const settle of waiting.values()) settle(BROKEN);
    waiting.clear();
  };
  const close = () => {
    worker?.terminate();
    worker = undefined;
    settleAll();
  };
  const opened = () => {
    if (worker) return worker;
    worker = open();
    worker.onmessage = ({ data }: MessageEvent<Numbered<Answer>>) => {
      waiting.get(data.number)?.(data.content);
      waiting.delete(data.number);
    };
    worker.onerror = close;
    return worker;
  };
  return {
    close,
    ask: (question) =>
      new Promise((settle) => {
        asked += 1;
        waiting.set(asked, settle);
        opened().postMessage({ number: asked, content: question });
      }),
  };
}

/** The page's own reader. */
export function openCourseReader(): CourseReader {
  return courseReader(() => new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' }));
}
