import { expect, test } from 'vitest';
import { parseKnownDistance } from './known-distance.ts';

// A yard is 0.9144 m and a foot 0.3048 m by definition (1959 agreement).
test.each([
  ['120', 'metres', 120],
  ['100', 'yards', 91.44],
  ['100 yd', 'metres', 91.44],
  ['1000ft', 'metres', 304.8],
  ["10'", 'metres', 3.048],
  ['0.5 km', 'yards', 500],
  ['250.5 m', 'yards', 250.5],
] as const)('%s, read in %s, are %d m', (typed, units, metres) => {
  const read = parseKnownDistance(typed, units);
  expect(read.kind === 'distance' && read.metres).toBeCloseTo(metres, 9);
});

test.each(['', '0', '-5', 'far', '1e9', '120 miles', '200 km', '9'.repeat(10_000)])('%s is no distance', (typed) => {
  expect(parseKnownDistance(typed, 'metres')).toMatchObject({ kind: 'wrong', why: expect.stringMatching(/\.$/) });
});
