import { expect, test } from 'vitest';
import { BROKEN, courseReader } from './client.ts';
import type { Answer, Numbered, Question } from './contract.ts';

/** A worker in the hand: what was asked, and a way to answer or to break. */
function handWorker() {
  const asked: Numbered<Question>[] = [];
  const port = {
    onmessage: null as Worker['onmessage'],
    onerror: null as Worker['onerror'],
    postMessage: (question: Numbered<Question>) => {
      asked.push(question);
    },
    terminate: () => undefined,
  };
  const answer = (number: number, content: Answer) =>
    port.onmessage?.call(port as unknown as Worker, { data: { number, content } } as MessageEvent);
  const breakDown = () => port.onerror?.call(port as unknown as Worker, {} as ErrorEvent);
  return { asked, port, answer, breakDown };
}

test('answers find their questions, in whatever order they come', async () => {
  const hand = handWorker();
  const reader = courseReader(() => hand.port);
  const [first, second] = [reader.ask({ ask: 'take', index: 0 }), reader.ask({ ask: 'take', index: 1 })];
  hand.answer(2, { kind: 'unreadable', why: 'second' });
  hand.answer(1, { kind: 'unreadable', why: 'first' });
  expect(await first).toMatchObject({ why: 'first' });
  expect(await second).toMatchObject({ why: 'second' });
});

test('a worker that breaks is said in one sentence, and the next question gets a new one', async () => {
  const hands = [handWorker(), handWorker()];
  let opened = 0;
  const reader = courseReader(() => (hands[opened++] ?? handWorker()).port);
  const lost = reader.ask({ ask: 'take', index: 0 });
  hands[0]?.breakDown();
  expect(await lost).toEqual(BROKEN);
  const next = reader.ask({ ask: 'take', index: 0 });
  hands[1]?.answer(2, { kind: 'unreadable', why: 'again' });
  expect(await next).toMatchObject({ why: 'again' });
});
