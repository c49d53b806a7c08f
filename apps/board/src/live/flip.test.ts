import { expect, test } from 'vitest';
import { PLAN, ROUTING } from '../reading/two-holes.test-plan.ts';
import { flipTo } from './flip.ts';

const plan = { ...PLAN, routings: ['a', 'b', 'c'].map((id) => ({ ...ROUTING, id })) };

test('flipping goes to the routing shown before, and there and back', () => {
  expect(flipTo(plan, 'c', 'a')).toBe('a');
  expect(flipTo(plan, 'a', 'c')).toBe('c');
});

test('with nothing shown before, or one that is gone, the next on the board; the last leads to the first', () => {
  expect(flipTo(plan, 'a', undefined)).toBe('b');
  expect(flipTo(plan, 'b', 'gone')).toBe('c');
  expect(flipTo(plan, 'c', undefined)).toBe('a');
});

test('one routing alone flips to nothing', () => {
  expect(flipTo(PLAN, 'a', undefined)).toBeUndefined();
});
