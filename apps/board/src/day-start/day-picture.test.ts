import { expect, test } from 'vitest';
import { ANALYSIS, PLAN, ROUTING } from '../reading/two-holes.test-plan.ts';
import { openDayPicture } from './day-picture.ts';

const moved = (x: number) => {
  const holes = ROUTING.holes.map((hole) =>
    hole.id === 'h1' && hole.green ? { ...hole, green: { ...hole.green, centre: { x, y: 365.76 } } } : hole,
  );
  const routing = { ...ROUTING, holes };
  return { plan: { ...PLAN, routings: [routing] }, routing, analysis: ANALYSIS };
};

test('a hole that moved is shown where it lay, under its number then; as it moves on the picture stays the same', () => {
  const pictureOf = openDayPicture({ at: 0, plan: PLAN });
  const asItWas = pictureOf({ plan: PLAN, routing: ROUTING, analysis: ANALYSIS });
  expect(asItWas).toEqual({ holes: [], things: [] });
  const first = pictureOf(moved(20));
  expect(first.holes.map(({ id, label, green }) => [id, label, green?.at])).toEqual([['h1', '1', { x: 0, y: 365.76 }]]);
  expect(pictureOf(moved(25))).toBe(first);
});

test('a routing that was not there in the morning has nothing to show', () => {
  const pictureOf = openDayPicture({ at: 0, plan: { ...PLAN, routings: [] } });
  expect(pictureOf(moved(20)).holes).toEqual([]);
});
