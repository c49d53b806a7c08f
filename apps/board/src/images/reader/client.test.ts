import { expect, test } from 'vitest';
import { checkPictureWith } from './client.ts';
import type { Answer, Doing } from './contract.ts';

function paperWorker() {
  const asked: unknown[] = [];
  const port = {
    onmessage: null as ((event: MessageEvent) => void) | null,
    onerror: null as ((event: ErrorEvent) => void) | null,
    ended: false,
    postMessage: (question: unknown) => asked.push(question),
    terminate: () => {
      port.ended = true;
    },
  };
  return { port, asked, say: (answer: Answer) => port.onmessage?.(new MessageEvent('message', { data: answer })) };
}

const FILE = new Blob(['x']);

test('what is being done is told on the way, and the worker ends with the answer', async () => {
  const { port, asked, say } = paperWorker();
  const doing: Doing[] = [];
  const answer = checkPictureWith(
    () => port,
    FILE,
    (one) => doing.push(one),
    new AbortController().signal,
  );
  say({ kind: 'doing', doing: 'reading' });
  say({ kind: 'refused', why: 'It is no picture.' });
  expect(await answer).toEqual({ kind: 'refused', why: 'It is no picture.' });
  expect([asked, doing, port.ended]).toEqual([[{ ask: 'check', file: FILE }], ['reading'], true]);
});

test('a check that is called off ends its worker at once', async () => {
  const [{ port }, controller] = [paperWorker(), new AbortController()];
  const answer = checkPictureWith(
    () => port,
    FILE,
    () => undefined,
    controller.signal,
  );
  controller.abort();
  expect(await answer).toBeUndefined();
  expect(port.ended).toBe(true);
});

test('a worker that breaks says what to do', async () => {
  const { port } = paperWorker();
  const answer = checkPictureWith(
    () => port,
    FILE,
    () => undefined,
    new AbortController().signal,
  );
  port.onerror?.(new Event('error') as ErrorEvent);
  expect(await answer).toMatchObject({ kind: 'refused', why: expect.stringContaining('memory') });
});
