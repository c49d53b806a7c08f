import type { ImageLayer } from '@loopwright/model';
import { expect, test } from 'vitest';
import { seenPart } from './seen-part.ts';

// 1000 × 500 pixels of 2 m: the upper left corner lies at (0, 1000).
const LAYER: ImageLayer = {
  id: 'm1',
  blob: '0'.repeat(64),
  widthPixels: 1000,
  heightPixels: 500,
  placement: [2, 0, 0, 0, -2, 1000],
  opacity: 1,
};
const SIZE = { width: 1000, height: 500 };

test('an image that fits the canvas is seen whole', () => {
  const seen = seenPart(LAYER, { scale: 0.5, x: 0, y: 500 }, SIZE);
  expect(seen).toEqual({ part: { left: 0, top: 0, right: 1, bottom: 1 }, share: 1 });
});

test('of an image looked at from near a part is seen, with a little beyond the edge', () => {
  // 4 pixels a metre, the corner of the image in the corner of the canvas: 250 m of 2000 m, and a tenth more.
  const seen = seenPart(LAYER, { scale: 4, x: 0, y: 4000 }, SIZE);
  expect(seen?.share).toBe(8);
  expect(seen?.part.left).toBe(0);
  expect(seen?.part.right).toBeCloseTo(275 / 2000, 12);
  expect(seen?.part.bottom).toBeCloseTo(137.5 / 1000, 12);
});

test('an image elsewhere, or without area, is not seen', () => {
  expect(seenPart(LAYER, { scale: 1, x: 5000, y: 500 }, SIZE)).toBeUndefined();
  expect(seenPart({ ...LAYER, placement: [0, 0, 0, 0, 0, 0] }, { scale: 1, x: 0, y: 0 }, SIZE)).toBeUndefined();
  expect(seenPart({ ...LAYER, placement: [1, 2, 0, 2, 4, 0] }, { scale: 1, x: 0, y: 0 }, SIZE)).toBeUndefined();
});

test('a quarter turn swaps the sides that are seen', () => {
  // Columns run north, rows run east: the upper left corner lies at (0, 0).
  const turned: ImageLayer = { ...LAYER, placement: [0, 2, 0, 2, 0, 0] };
  const seen = seenPart(turned, { scale: 1, x: 0, y: 500 }, { width: 400, height: 500 });
  expect(seen?.part.right).toBeCloseTo(550 / 2000, 12); // 500 m up, and a tenth of the height
  expect(seen?.part.bottom).toBeCloseTo(440 / 1000, 12); // 400 m across, and a tenth of the width
});
