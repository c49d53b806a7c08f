import { expect, test } from 'vitest';
import { legendWords, sinceWords } from './day-words.ts';

test('the start of the day has its time, and its date once the night has passed', () => {
  const start = new Date(2026, 4, 4, 8, 2);
  expect(sinceWords(start, new Date(2026, 4, 4, 19, 0))).toBe('08:02 today');
  expect(sinceWords(start, new Date(2026, 4, 5, 0, 1))).toBe('08:02 on 4 May');
});

test('the legend says how much lies elsewhere', () => {
  expect(legendWords('08:02 today', 0, 0)).toBe('Nothing lies elsewhere than at 08:02 today.');
  expect(legendWords('08:02 today', 1, 0)).toBe('Dotted: as of 08:02 today. 1 hole lies elsewhere now.');
  expect(legendWords('08:02 today', 3, 1)).toBe(
    'Dotted: as of 08:02 today. 3 holes and 1 thing on the site lie elsewhere now.',
  );
});
