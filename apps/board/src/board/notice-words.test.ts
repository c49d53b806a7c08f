import { expect, test } from 'vitest';
import { noticeWords } from './notice-words.ts';

const step = () => 'move of green 6';

test('what was put back is counted, and undo is offered', () => {
  const words = noticeWords({ kind: 'put back', result: { kind: 'put back', steps: 5, overtaken: 0 } }, step);
  expect(words).toBe('Put back what was tried: 5 steps. Undo brings it all again.');
});

test('what somebody else has changed meanwhile is said to stay', () => {
  const words = noticeWords({ kind: 'put back', result: { kind: 'put back', steps: 1, overtaken: 2 } }, step);
  expect(words).toContain('One step. 2 parts stayed as somebody else has put it meanwhile.');
});

test('nothing left to put back is said', () => {
  expect(noticeWords({ kind: 'put back', result: { kind: 'nothing' } }, step)).toMatch(/^None of those steps/);
});

test('an undo on a hole that somebody took away meanwhile says that nobody sees it', () => {
  const edit = { edit: 'reverse hole', routing: 'a', hole: 'h1' } as const;
  const result = { kind: 'undone', step: edit, overtaken: 0, gone: ['h1'] } as const;
  expect(noticeWords({ kind: 'stepped', result }, step)).toMatch(
    /^Undid: move of green 6\. That hole is not on the plan/,
  );
});
