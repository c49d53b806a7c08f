import type { ImageLayer, Plan } from '@loopwright/model';
import { expect, test } from 'vitest';
import { PLAN } from '../../reading/two-holes.test-plan.ts';
import { northFound } from './north-edit.ts';

const PICTURE: ImageLayer = {
  id: 'i',
  blob: 'b',
  widthPixels: 100,
  heightPixels: 100,
  placement: [1, 0, -50, 0, -1, 50],
  opacity: 1,
  scaledBy: 'two points',
};
const bareWith = (...images: readonly ImageLayer[]): Plan => ({
  ...PLAN,
  site: { name: 'Made-up Moor', north: 0, bases: [], marks: [], features: [], images },
  routings: [],
});

test('on bare land a picture whose north is to the right is turned a quarter to the left, about the foot of the line', () => {
  const { edit, turns } = northFound(bareWith(PICTURE), Math.PI / 2, { x: 0, y: 0 });
  expect(turns).toBe('the pictures');
  if (edit.edit !== 'several') throw new Error('one step of several');
  const [north, turned] = edit.edits;
  expect(north).toEqual({ edit: 'set north', north: 0 });
  if (turned?.edit !== 'change image') throw new Error('the picture is placed anew');
  // By hand: what lay right lies up, so one column more is a metre more north, and the upper left corner is lower left.
  const [a, b, c, d, e, f] = turned.to.placement ?? [];
  const by = [0, 1, -50, 1, 0, -50];
  for (const [place, value] of [a, b, c, d, e, f].entries()) expect(value).toBeCloseTo(by[place] ?? Number.NaN, 9);
});

test.each([
  ['something is drawn', { ...bareWith(PICTURE), routings: PLAN.routings }],
  ['a picture lies on a survey grid', bareWith(PICTURE, { ...PICTURE, id: 'j', scaledBy: 'world file' })],
  ['there is no picture', bareWith()],
])('where %s only the arrow turns', (_, plan) => {
  expect(northFound(plan, 1, undefined)).toEqual({ edit: { edit: 'set north', north: 1 }, turns: 'the arrow' });
});
