import { expect, test } from 'vitest';
import { namesOf, partWords } from './names.ts';
import { PLAN, ROUTING } from './two-holes.test-plan.ts';

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

// 52.5 m is 57.4 yd and 60.4 m is 66.1 yd: 57 and 66 are shown, so the change is 9, though 7.9 m is 8.6 yd.
test.each([
  [52.5, 60.4, '+9 yd'],
  [60.4, 52.5, '−9 yd'],
  [52.3, 52.4, '±0 yd'],
])('a length that goes from %f to %f m changed by what is shown', (before, after, words) => {
  expect(namesOf(PLAN, ROUTING, 'yards').lengthChange(before, after)).toBe(words);
});
