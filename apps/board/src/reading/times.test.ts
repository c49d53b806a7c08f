import { expect, test } from 'vitest';
import { timeWords } from './times.ts';

test.each([
  [0, '0 s'],
  [45, '45 s'],
  [60, '1 min'],
  [3570, '1 h 00 min'],
  [3900, '1 h 05 min'],
  [7199, '2 h 00 min'],
])('%d seconds reads %s', (seconds, words) => {
  expect(timeWords(seconds)).toBe(words);
});
