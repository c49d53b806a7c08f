/** As much of a worker as its owner needs; tests stand in for it. */
export type WorkerPort = Pick<Worker, 'postMessage' | 'terminate' | 'onmessage' | 'onerror'>;

/** One question to a worker that lives for it alone. */
export interface AskedOnce<Message, Answer> {
  readonly question: unknown;
  /** The answer in a message of the worker; `undefined` for one on the way to it. */
  readonly answerIn: (message: Message) => Answer | undefined;
  /** The answer when the worker itself breaks, e.g. for want of memory. */
  readonly broken: Answer;
  /** Calls it off at any moment: the answer is then `undefined`. */
  readonly signal: AbortSignal;
}

/**
 * Asks a worker of its own, so that a large file does not stop the page: the worker ends with it, and gives back the memory it took.
 *
 * @param open  makes the worker
 */
export function askOnce<Message, Answer>(
  open: () => WorkerPort,
  { question, answerIn, broken, signal }: AskedOnce<Message, Answer>,
): Promise<Answer | undefined> {
  return new Promise((settle) => {
    if (signal.aborted) return settle(undefined);
    const worker = open();
    const end = (answer: Answer | undefined) => {
      worker.terminate();
      settle(answer);
    };
    signal.addEventListener('abort', () => end(undefined), { once: true });
    worker.onmessage = ({ data }: MessageEvent<Message>) => {
      const answer = answerIn(data);
      if (answer !== undefined) end(answer);
    };
    worker.onerror = () => end(broken);
    worker.postMessage(question);
  });
}
