import { expect, test } from 'vitest';
import { partWords } from './names.ts';

const SETS = [
  { id: 'back', name: 'Back', player: 'scratch man' },
  { id: 'fwd', name: 'Forward tees', player: 'bogey woman' },
] as const;

test.each([
  ['green', 'green 6'],
  ['tee:back', 'back tee 6'],
  ['tee:fwd', 'forward tee 6'],
  ['tee:gone', 'tee 6'],
  ['turn:t1', 'turn point 6'],
] as const)('part %s of hole 6 is called %s', (part, words) => {
  expect(partWords(SETS, '6', part)).toBe(words);
});
