import type { Boundary, SitePoint } from '@loopwright/model';
import { expect, test } from 'vitest';
import { boundaryRefusal, boundaryWith } from './boundary-edit.ts';

const square = (x: number, y: number, side: number): readonly SitePoint[] => [
  { x, y },
  { x: x + side, y },
  { x: x + side, y: y + side },
  { x, y: y + side },
];
const LAND: Boundary = { outlines: [square(0, 0, 900)], inner: [], tolerance: 2 };

test('a boundary drawn anew takes the place of all there was', () => {
  const ring = square(50, 50, 400);
  expect(boundaryWith(LAND, 'anew', ring, 5)).toEqual({ outlines: [ring], inner: [], tolerance: 5 });
  expect(boundaryWith(undefined, 'inner', ring, 5)).toEqual({ outlines: [ring], inner: [], tolerance: 5 });
});

test('a further piece and land inside are put beside what there is, and its tolerance stays', () => {
  const further = square(2000, 0, 100);
  const inner = square(100, 100, 50);
  expect(boundaryWith(LAND, 'further', further, 0)).toEqual({ ...LAND, outlines: [...LAND.outlines, further] });
  expect(boundaryWith(LAND, 'inner', inner, 0)).toEqual({ ...LAND, inner: [inner] });
});

test("someone else's land inside lies inside, and there are twenty at most", () => {
  expect(boundaryRefusal(LAND, 'inner', square(100, 100, 50))).toBeUndefined();
  expect(boundaryRefusal(LAND, 'inner', square(880, 100, 50))).toMatch(/within the boundary/);
  const full = { ...LAND, inner: Array.from({ length: 20 }, () => square(9, 9, 5)) };
  expect(boundaryRefusal(full, 'inner', square(100, 100, 50))).toMatch(/20 such outlines at most/);
  expect(boundaryRefusal(full, 'anew', square(100, 100, 50))).toBeUndefined();
});
