import { expect, test } from 'vitest';
import { areaWords } from './areas.ts';

// Truth: hectare 10,000 m²; international yard 0.9144 m (1959), acre 4,840 square yards, so 4,046.856 422 4 m².
test.each([
  [840, 'metres', '840 m²'],
  [9_999, 'metres', '9,999 m²'],
  [10_000, 'metres', '1.00 ha'],
  [12_345.6, 'metres', '1.23 ha'],
  [0.836_127_36, 'yards', '1 yd²'],
  [4_046.856_422_4, 'yards', '1.00 acres'],
  [40_468.564_224, 'yards', '10.00 acres'],
  [840, 'yards', '1,005 yd²'],
  [0, 'metres', '0 m²'],
] as const)('%f m² read in %s: %s', (squareMetres, units, words) => {
  expect(areaWords(squareMetres, units)).toBe(words);
});
