import type { ImageLayer } from '@loopwright/model';
import { expect, test } from 'vitest';
import { sitePointOf } from '../../drawing/images/corners.ts';
import { laidOver, layOverEdit } from './laid-over.ts';

// 1000 × 500 pixels of 1 m with the lower left corner in the origin.
const IMAGE: ImageLayer = {
  id: 'm2',
  blob: '0'.repeat(64),
  widthPixels: 1000,
  heightPixels: 500,
  placement: [1, 0, 0, 0, -1, 500],
  opacity: 1,
  scaledBy: 'guess',
};
const match = (column: number, row: number, x: number, y: number) => ({ pixel: { column, row }, to: { x, y } });

test('two matches put their pixels where they belong: half the size, a quarter turn to the left', () => {
  const laid = laidOver(IMAGE, [match(0, 500, 100, 100), match(1000, 500, 100, 600)]);
  if (!laid) throw new Error('two matches have a fit');
  expect(laid.left).toEqual([0, 0]);
  const after = { ...IMAGE, placement: laid.placement };
  expect(sitePointOf(after, 1000, 500)).toEqual({ x: 100, y: 600 });
  expect(sitePointOf(after, 0, 0)).toEqual({ x: -150, y: 100 }); // 500 rows up are 250 m to the west
});

test('one match shifts; none, or one place for all, lays nothing', () => {
  expect(laidOver(IMAGE, [match(10, 490, 0, 0)])?.placement).toEqual([1, 0, -10, 0, -1, 490]);
  expect(laidOver(IMAGE, [])).toBeUndefined();
  expect(laidOver(IMAGE, [match(5, 5, 0, 0), match(900, 5, 0, 0)])).toBeUndefined();
});

test('what is left of a match that does not fit is told in metres', () => {
  const laid = laidOver(IMAGE, [
    match(0, 500, 0, 0),
    match(1000, 500, 1000, 0),
    match(1000, 0, 1000, 503),
    match(0, 0, 0, 500),
  ]);
  expect(Math.max(...(laid?.left ?? []))).toBeGreaterThan(0.5);
  expect(Math.max(...(laid?.left ?? []))).toBeLessThan(3);
});

test('over pictures that lie by a guess a picture lies by a guess', () => {
  const laid = laidOver(IMAGE, [match(0, 500, 0, 0), match(1000, 500, 500, 0)]);
  if (!laid) throw new Error('two matches have a fit');
  const known: ImageLayer = { ...IMAGE, id: 'm1', scaledBy: 'two points' };
  expect(layOverEdit(IMAGE, laid, [{ ...known, scaledBy: 'guess' }, IMAGE])).not.toMatchObject({
    to: { scaledBy: expect.anything() },
  });
  expect(layOverEdit(IMAGE, laid, [known, IMAGE])).toMatchObject({ to: { scaledBy: 'two points' } });
});
