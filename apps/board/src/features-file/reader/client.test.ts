import { expect, test } from 'vitest';
import { LAND } from '../../tools/land/land.test-site.ts';
import { readFeaturesWith } from './client.ts';
import type { Answer } from './contract.ts';

function paperWorker() {
  const told: unknown[] = [];
  const worker = {
    onmessage: null as ((event: MessageEvent) => void) | null,
    onerror: null as ((event: ErrorEvent) => void) | null,
    postMessage: (question: unknown) => told.push(question),
    terminate: () => told.push('ended'),
  };
  return { told, worker };
}
const BROKE = { colno: 0, lineno: 0, filename: '', message: '', error: undefined };
const question = { file: new Blob(['{}']), site: LAND };

test('a file is read in a worker of its own, which ends with the answer', async () => {
  const { worker, told } = paperWorker();
  const answer: Answer = { kind: 'unreadable', why: 'It is empty.' };
  const reading = readFeaturesWith(() => worker, question, new AbortController().signal);
  worker.onmessage?.(new MessageEvent('message', { data: answer }));
  expect(await reading).toEqual(answer);
  expect(told).toEqual([question, 'ended']);
});

test('a reading that is called off, and a worker that breaks, leave nothing running', async () => {
  const called = new AbortController();
  const first = paperWorker();
  const stopped = readFeaturesWith(() => first.worker, question, called.signal);
  called.abort();
  expect(await stopped).toBeUndefined();
  expect(first.told.at(-1)).toBe('ended');
  const second = paperWorker();
  const broken = readFeaturesWith(() => second.worker, question, new AbortController().signal);
  second.worker.onerror?.(Object.assign(new Event('error'), BROKE));
  expect(await broken).toMatchObject({ kind: 'unreadable' });
});
