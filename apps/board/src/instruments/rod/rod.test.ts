import { distanceBetween } from '@loopwright/geometry';
import { seededRandom } from '@loopwright/model';
import { expect, test } from 'vitest';
import { jointAt, jointsOf, straightRod, swung, swungTowards, withLegs } from './rod.ts';

const at = (x: number, y: number) => ({ x, y });
const close = (points: readonly { x: number; y: number }[]) =>
  points.map(({ x, y }) => ({ x: Math.round(x * 1e6) / 1e6, y: Math.round(y * 1e6) / 1e6 }));

test('a straight rod lies from its pin', () => {
  expect(jointsOf(straightRod(at(10, 20), [265, 140]))).toEqual([at(10, 20), at(10, 285), at(10, 425)]);
});

// By hand: a 3-4-5 direction, so that nothing is rounded.
test('about the pin the whole rod turns, bends kept', () => {
  const bent = swung(straightRod(at(0, 0), [100, 50]), 1, at(1, 0));
  expect(jointsOf(bent)).toEqual([at(0, 0), at(0, 100), at(50, 100)]);
  // First leg towards (0.6, 0.8): the second leg is still square to it on its right, (0.8, −0.6).
  expect(close(jointsOf(swung(bent, 0, at(0.6, 0.8))))).toEqual([at(0, 0), at(60, 80), at(100, 50)]);
});

test('about a joint only what lies beyond turns', () => {
  const rod = swung(straightRod(at(0, 0), [100, 50, 50]), 1, at(1, 0));
  expect(jointsOf(rod)).toEqual([at(0, 0), at(0, 100), at(50, 100), at(100, 100)]);
});

test('the far end of a bent rod is swung into the direction of a place', () => {
  const bent = swung(straightRod(at(0, 0), [80, 60]), 1, at(1, 0));
  // The far end lies at (60, 80), 100 m from the pin: swung east it lies at (100, 0).
  const end = jointsOf(swungTowards(bent, 0, 2, at(500, 0))).at(-1) ?? at(0, 0);
  expect(close([end])).toEqual([at(100, 0)]);
});

test('swung ten thousand times a rod keeps its legs', () => {
  const random = seededRandom(7);
  let rod = straightRod(at(0, 0), [265, 140, 90]);
  for (let turn = 0; turn < 10_000; turn++) {
    const joint = Math.floor(random() * 3);
    rod = swungTowards(rod, joint, joint + 1, at(random() * 900 - 450, random() * 900 - 450));
  }
  const joints = jointsOf(rod);
  const legs = joints.slice(1).map((joint, index) => distanceBetween(joints[index] ?? joint, joint));
  for (const [index, leg] of [265, 140, 90].entries()) expect(Math.abs((legs[index] ?? 0) - leg)).toBeLessThan(1e-6);
});

test('other legs keep the bends; a further one goes straight on', () => {
  const bent = swung(straightRod(at(0, 0), [100, 50]), 1, at(1, 0));
  expect(jointsOf(withLegs(bent, [200, 40, 60]))).toEqual([at(0, 0), at(0, 200), at(40, 200), at(100, 200)]);
  expect(jointsOf(withLegs(bent, [200]))).toEqual([at(0, 0), at(0, 200)]);
});

test('a press takes the nearest joint within reach', () => {
  const rod = straightRod(at(0, 0), [100, 50]);
  expect(jointAt(rod, at(3, 98), 12)).toBe(1);
  expect(jointAt(rod, at(0, 5), 12)).toBe(0);
  expect(jointAt(rod, at(0, 60), 12)).toBeUndefined();
});

test('pointing at the pin itself turns nothing', () => {
  const rod = straightRod(at(5, 5), [100]);
  expect(swungTowards(rod, 0, 1, at(5, 5))).toBe(rod);
});
