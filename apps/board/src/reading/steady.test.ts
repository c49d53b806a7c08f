import { expect, test } from 'vitest';
import { saysTheSame } from './steady.ts';

test('a row that says the same is the same, however often it is made', () => {
  expect(saysTheSame({ row: { hole: 'h1', figures: '378' } }, { row: { hole: 'h1', figures: '378' } })).toBe(true);
  expect(saysTheSame({ row: { hole: 'h1', figures: '378' } }, { row: { hole: 'h1', figures: '379' } })).toBe(false);
});

test('a missing field is a difference', () => {
  expect(saysTheSame({ a: 1, b: undefined }, { a: 1 })).toBe(false);
  expect(saysTheSame({ a: 1, b: undefined }, { a: 1, c: undefined })).toBe(false);
});

test('a callback that is another one is a difference', () => {
  expect(saysTheSame({ on: () => 1 }, { on: () => 1 })).toBe(false);
});
