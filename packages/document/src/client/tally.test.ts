import { expect, test } from 'vitest';
import { openTally } from './tally.ts';

test('S6: nothing is settled before the answer to the server’s step 1 is committed', () => {
  const tally = openTally();
  tally.opened();
  expect(tally.isSettled()).toBe(false);
  tally.sent();
  expect(tally.isSettled()).toBe(false);
  tally.committed(1);
  expect(tally.isSettled()).toBe(true);
});

test('what waits is counted in changes, not in frames', () => {
  const tally = openTally();
  tally.edited();
  tally.edited();
  tally.opened();
  tally.sent();
  tally.edited();
  tally.sent();
  expect(tally.waiting()).toBe(3);
  tally.committed(1);
  expect(tally.waiting()).toBe(1);
  tally.committed(2);
  expect(tally.waiting()).toBe(0);
});

test('a count of an earlier connection says nothing about the frames of this one', () => {
  const tally = openTally();
  tally.opened();
  tally.sent();
  tally.committed(1);
  tally.edited();
  tally.opened();
  tally.sent();
  expect([tally.isSettled(), tally.waiting()]).toEqual([false, 1]);
});

test('a change that went out in no frame, as when the socket is closing, is not settled', () => {
  const tally = openTally();
  tally.opened();
  tally.sent();
  tally.committed(1);
  tally.edited();
  expect([tally.isSettled(), tally.waiting()]).toEqual([false, 1]);
});

test('S5: a count that falls, or that nobody sent, is not believed', () => {
  const tally = openTally();
  tally.opened();
  tally.sent();
  tally.sent();
  tally.committed(2);
  tally.committed(1);
  expect(tally.isSettled()).toBe(true);
  tally.edited();
  tally.committed(99);
  expect(tally.waiting()).toBe(1);
});
