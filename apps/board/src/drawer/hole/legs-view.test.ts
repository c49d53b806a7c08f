import type { Hole } from '@loopwright/model';
import { expect, test } from 'vitest';
import { ANALYSIS, ROUTING } from '../../reading/two-holes.test-plan.ts';
import { legOfBearing, legOfLength, toLegs } from './legs-view.ts';

const [first] = ROUTING.holes;
if (!first) throw new Error('the sample has no hole');
const of = { routing: 'a', hole: 'h1' };
/** 300 m north, then a 3-4-5 triangle's long side to the green: 50 m. */
const bent: Hole = {
  ...first,
  turnPoints: [{ id: 't1', at: { x: 0, y: 300 } }],
  green: { centre: { x: 30, y: 340 }, length: 30, width: 20, bearing: 0 },
  pinned: ['green'],
};

test('a hole has a leg to each turn point and one to the green', () => {
  const legs = toLegs(bent, ANALYSIS.holes.get('h1'));
  expect(legs.map(({ to, words, length, pinned }) => [to, words, length, pinned])).toEqual([
    ['turn:t1', 'tee to turn point', 300, false],
    ['green', 'turn point to green', 50, true],
  ]);
  expect(legs[0]?.bearing).toBe(0);
  expect(legs[1]?.bearing).toBeCloseTo(Math.atan2(30, 40), 6);
});

test('a typed length moves the point the leg leads to along the leg; what comes after stays', () => {
  const [, last] = toLegs(bent, ANALYSIS.holes.get('h1'));
  if (!last) throw new Error('no leg');
  expect(legOfLength(of, last, 100)).toEqual({ ...of, edit: 'move part', part: 'green', to: { x: 60, y: 380 } });
});

test('a typed bearing swings the point about the start of the leg', () => {
  const [drive] = toLegs(bent, ANALYSIS.holes.get('h1'));
  if (!drive) throw new Error('no leg');
  expect(legOfBearing(of, drive, Math.PI / 2)).toEqual({
    ...of,
    edit: 'move part',
    part: 'turn:t1',
    to: { x: 300, y: 0 },
  });
});

test('a hole without a green has no legs', () => {
  const { green: _, ...bare } = bent;
  expect(toLegs(bare, ANALYSIS.holes.get('s1'))).toEqual([]);
});
