import { expect, test } from 'vitest';
import { beadAt, placeAt, type Slot } from './drop-place.ts';

const SLOTS: readonly Slot[] = [
  { of: { kind: 'base', loop: 'front' }, top: 0, bottom: 20 },
  { of: { kind: 'bead', loop: 'front', hole: 'a' }, top: 20, bottom: 60 },
  { of: { kind: 'bead', loop: 'front', hole: 'b' }, top: 60, bottom: 100 },
  { of: { kind: 'base', loop: 'back' }, top: 100, bottom: 120 },
  { of: { kind: 'bead', loop: 'back', hole: 'c' }, top: 120, bottom: 160 },
  { of: { kind: 'tray' }, top: 200, bottom: 240 },
];

test.each([
  [-50, { in: 'loop', loop: 'front', after: 'first' }],
  [30, { in: 'loop', loop: 'front', after: 'first' }],
  [50, { in: 'loop', loop: 'front', after: 'a' }],
  [70, { in: 'loop', loop: 'front', after: 'a' }],
  [105, { in: 'loop', loop: 'front', after: 'a' }],
  [112, { in: 'loop', loop: 'back', after: 'first' }],
  [150, { in: 'loop', loop: 'back', after: 'c' }],
  [190, { in: 'loop', loop: 'back', after: 'c' }],
  [210, { in: 'tray' }],
  [900, { in: 'tray' }],
])('bead b held at %d px goes to %o', (y, place) => {
  expect(placeAt(SLOTS, ['b'], y)).toEqual(place);
});

test('the bead under the pointer is the one to swap with, never the one in the hand', () => {
  expect(beadAt(SLOTS, ['b'], 30)).toBe('a');
  expect(beadAt(SLOTS, ['b'], 70)).toBeUndefined();
  expect(beadAt(SLOTS, ['b'], 110)).toBeUndefined();
});
