import { expect, test } from 'vitest';
import { LAND } from '../../../tools/land/land.test-site.ts';
import { outlinesOf } from '../../../tools/land/outlines-of.ts';
import { addAfter, pageOf, vertexAnswer } from './vertex-view.ts';

const [pond] = outlinesOf(LAND, { kind: 'feature', id: 'pond' });
const [road] = outlinesOf(LAND, { kind: 'feature', id: 'road' });
if (!pond || !road) throw new Error('the land has a pond and a road');
const corner = { x: 200, y: 200 };

test('a typed coordinate moves the vertex, known by where it lay', () => {
  expect(vertexAnswer(LAND, pond, corner, 'x', '190,5')).toEqual({
    kind: 'edit',
    edit: { edit: 'move vertex', outline: pond.outline, from: corner, to: { x: 190.5, y: 200 } },
  });
  expect(vertexAnswer(LAND, pond, corner, 'x', '200.0')).toEqual({ kind: 'same' });
});

test('what is no figure, and what would make the outline cross itself, keeps the old one and says why', () => {
  expect(vertexAnswer(LAND, pond, corner, 'y', 'north')).toMatchObject({ kind: 'wrong' });
  expect(vertexAnswer(LAND, pond, { x: 300, y: 200 }, 'y', '400')).toMatchObject({
    kind: 'wrong',
    why: expect.stringMatching(/cross or touch itself/),
  });
});

test('a vertex is added in the middle of the edge behind; behind the end of a line as far on', () => {
  expect(addAfter(pond, 3)?.at).toEqual({ x: 200, y: 250 });
  expect(addAfter(road, 0)?.at).toEqual({ x: 500, y: 700 });
  expect(addAfter(road, 1)?.at).toEqual({ x: 2000, y: 700 });
  expect(addAfter(road, 9)).toBeUndefined();
});

test('the table opens at the page of the vertex that is picked out', () => {
  expect([0, 39, 40, 499].map(pageOf)).toEqual([0, 0, 1, 12]);
});
