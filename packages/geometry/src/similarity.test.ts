import { expect, test } from 'vitest';
import { carried, distancesLeft, fitSimilarity, type PointPair } from './similarity.ts';

const pair = (x: number, y: number, u: number, v: number): PointPair => ({ from: { x, y }, to: { x: u, y: v } });

test('one pair is a shift', () => {
  expect(fitSimilarity([pair(3, 4, 13, -6)])).toEqual({ p: 1, q: 0, e: 10, n: -10 });
});

test('two pairs fit exactly: a quarter turn to the left at twice the size', () => {
  const pairs = [pair(0, 0, 100, 200), pair(10, 0, 100, 220)];
  const found = fitSimilarity(pairs);
  expect(found).toEqual({ p: 0, q: 2, e: 100, n: 200 });
  expect(found && carried(found, { x: 0, y: 5 })).toEqual({ x: 90, y: 200 });
});

// A sum done by hand: the corners of a square of 2 m belong on one of 4 m, but one place is read 0.4 m too far east.
// p = (16 + 0.4) ÷ 8, q = −0.4 ÷ 8, the mean moves 0.1 m; left over are 0.3, 0.1, 0.1 and 0.1 m less what p and q take up.
test('of more pairs than are needed the squares of what is left are least', () => {
  const pairs = [pair(1, 1, 2.4, 2), pair(-1, 1, -2, 2), pair(-1, -1, -2, -2), pair(1, -1, 2, -2)];
  const found = fitSimilarity(pairs);
  expect(found?.p).toBeCloseTo(2.05, 12);
  expect(found?.q).toBeCloseTo(-0.05, 12);
  expect(found?.e).toBeCloseTo(0.1, 12);
  expect(found?.n).toBeCloseTo(0, 12);
  if (!found) throw new Error('four pairs have a fit');
  const squares = distancesLeft(found, pairs).reduce((sum, left) => sum + left * left, 0);
  // 0.4² is all there is: the mean takes 4 · 0.1², p and q take 8 · (0.05² + 0.05²).
  expect(squares).toBeCloseTo(0.16 - 0.04 - 0.04, 12);
  for (const [p, q, e, n] of [
    [0.01, 0, 0, 0],
    [0, 0.01, 0, 0],
    [0, 0, 0.01, 0],
    [0, 0, 0, -0.01],
  ] as const) {
    const other = { p: found.p + p, q: found.q + q, e: found.e + e, n: found.n + n };
    expect(distancesLeft(other, pairs).reduce((sum, left) => sum + left * left, 0)).toBeGreaterThan(squares);
  }
});

test('points that are all one have no scale', () => {
  expect(fitSimilarity([])).toBeUndefined();
  expect(fitSimilarity([pair(1, 1, 0, 0), pair(1, 1, 5, 5)])).toBeUndefined();
  expect(fitSimilarity([pair(0, 0, 5, 5), pair(1, 1, 5, 5)])).toBeUndefined();
});
