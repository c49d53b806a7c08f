import { distanceBetween } from '@loopwright/geometry';
import type { ImageLayer } from '@loopwright/model';
import { expect, test } from 'vitest';
import { cornersOf, sitePointOf } from '../drawing/images/corners.ts';
import { laidAbout, laidInView, middleOf, onTheGround, placedAfter, sizedAbout, turnedAbout } from './placement.ts';

const PIXELS = { widthPixels: 600, heightPixels: 400 };
const layerAt = (placement: ImageLayer['placement']): ImageLayer => ({
  ...PIXELS,
  id: 'm1',
  blob: '0'.repeat(64),
  opacity: 1,
  placement,
});

test('a first image lies about the middle of the site, 1200 m wide: two metres a pixel', () => {
  const layer = layerAt(laidAbout(PIXELS, { x: 0, y: 0 }, 1200));
  expect(layer.placement).toEqual([2, 0, -600, 0, -2, 400]);
  expect(middleOf(layer)).toEqual({ x: 0, y: 0 });
  expect(onTheGround(layer)).toEqual({ width: 1200, height: 800, turnedDegrees: 0 });
});

test('a further image lies whole in what is in view', () => {
  const view = { minX: 100, minY: 0, maxX: 1100, maxY: 1000 };
  for (const corner of cornersOf(layerAt(laidInView(PIXELS, view)))) {
    expect(corner.x).toBeGreaterThan(view.minX);
    expect(corner.x).toBeLessThan(view.maxX);
    expect(corner.y).toBeGreaterThan(view.minY);
    expect(corner.y).toBeLessThan(view.maxY);
  }
});

test('scaled about a point, that point stays and every distance grows alike', () => {
  const before = layerAt(laidAbout(PIXELS, { x: 50, y: 20 }, 1200));
  const first = sitePointOf(before, 100, 300);
  const after = layerAt(placedAfter(before.placement, sizedAbout(first, 1.25)));
  expect(distanceBetween(sitePointOf(after, 100, 300), first)).toBeLessThan(1e-9);
  // (100, 300) to (400, 300) are 300 pixels of 2 m: 600 m, then 750 m.
  expect(distanceBetween(sitePointOf(after, 100, 300), sitePointOf(after, 400, 300))).toBeCloseTo(750, 9);
  expect(onTheGround(after)).toMatchObject({ width: 1500, height: 1000 });
});

test('a quarter turn clockwise brings the upper right corner to the lower right, and is told in degrees', () => {
  const before = layerAt(laidAbout(PIXELS, { x: 0, y: 0 }, 600));
  const after = layerAt(placedAfter(before.placement, turnedAbout({ x: 0, y: 0 }, 90)));
  const upperRight = sitePointOf(after, 600, 0); // was (300, 200)
  expect(upperRight.x).toBeCloseTo(200, 9);
  expect(upperRight.y).toBeCloseTo(-300, 9);
  expect(onTheGround(after).turnedDegrees).toBe(90);
  expect(onTheGround(layerAt(placedAfter(after.placement, turnedAbout(middleOf(after), 290)))).turnedDegrees).toBe(20);
});
