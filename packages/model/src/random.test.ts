import { expect, test } from 'vitest';
import { seededRandom } from './random.ts';

const taken = (seed: number, count: number) => {
  const random = seededRandom(seed);
  return Array.from({ length: count }, random);
};

test('one seed, one row of numbers', () => {
  expect(taken(42, 100)).toEqual(taken(42, 100));
  expect(taken(42, 100)).not.toEqual(taken(43, 100));
});

test('numbers lie in [0, 1), also from odd seeds', () => {
  for (const seed of [0, 1, -1, 2 ** 32, 2 ** 53, 0.5]) {
    for (const number of taken(seed, 1000)) {
      expect(number).toBeGreaterThanOrEqual(0);
      expect(number).toBeLessThan(1);
    }
  }
});

// Uniform on [0, 1): mean 1/2, variance 1/12; with 100,000 numbers the mean is off by more than 4 of its own standard
// deviations (0.0037) less than once in 15,000 tries, and ten bins of 10,000 by more than 400 about as seldom.
test('they are spread evenly', () => {
  const numbers = taken(7, 100_000);
  const mean = numbers.reduce((sum, number) => sum + number, 0) / numbers.length;
  expect(Math.abs(mean - 0.5)).toBeLessThan(0.0037);
  const bins = new Array<number>(10).fill(0);
  for (const number of numbers) bins[Math.floor(number * 10)] = (bins[Math.floor(number * 10)] ?? 0) + 1;
  for (const count of bins) expect(Math.abs(count - 10_000)).toBeLessThan(400);
});

test('no short cycle', () => {
  expect(new Set(taken(3, 100_000)).size).toBeGreaterThan(99_990);
});
