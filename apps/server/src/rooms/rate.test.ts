import { expect, test } from 'vitest';
import { openAllowance } from './rate.ts';

test('a burst is let through, and then so much a second', () => {
  const allowance = openAllowance(10, 3, 0);
  expect([1, 2, 3, 4].map(() => allowance.take(1, 0))).toEqual([true, true, true, false]);
  expect(allowance.take(1, 99)).toBe(false);
  expect(allowance.take(1, 200)).toBe(true);
});

test('what is not used is saved up to the burst and no further', () => {
  const allowance = openAllowance(10, 3, 0);
  expect(allowance.take(4, 1_000_000)).toBe(false);
  expect(allowance.take(3, 1_000_000)).toBe(true);
});

test('a clock that is set back takes nothing away', () => {
  const allowance = openAllowance(10, 20, 1_000_000);
  expect(allowance.take(5, 0)).toBe(true);
  expect(allowance.take(15, 0)).toBe(true);
  expect(allowance.take(1, 0)).toBe(false);
  expect(allowance.take(10, 1000)).toBe(true);
});
