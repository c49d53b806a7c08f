import type { ImageLayer } from '@loopwright/model';
import { expect, test } from 'vitest';
import { onTheGround } from '../../../images/placement.ts';
import { imageRows, opacityEdit, turnEdit, typedDegrees } from './images-view.ts';

// 600 × 400 pixels of 2 m.
const IMAGE: ImageLayer = {
  id: 'm1',
  blob: '0'.repeat(64),
  widthPixels: 600,
  heightPixels: 400,
  placement: [2, 0, -600, 0, -2, 400],
  opacity: 0.6,
  name: 'Aerial',
  scaledBy: 'guess',
};
const [LOW, MIDDLE, HIGH] = [IMAGE, { ...IMAGE, id: 'm2' }, { ...IMAGE, id: 'm3' }];

test('an image says its size in pixels and on the ground, and how that is known', () => {
  expect(imageRows([IMAGE], 'metres')).toEqual([
    {
      id: 'm1',
      name: 'Aerial',
      pixels: '600 × 400 pixels',
      ground: '1,200 × 800 m',
      scale: 'at a guessed size: not to scale yet',
      isGuess: true,
      turnedDegrees: 0,
      opacity: 60,
    },
  ]);
  expect(imageRows([IMAGE], 'yards')[0]?.ground).toBe('1,312 × 875 yd'); // 1200 ÷ 0.9144, 800 ÷ 0.9144
});

test('the uppermost stands first; up and down name what it then lies over', () => {
  const rows = imageRows([LOW, MIDDLE, HIGH], 'metres');
  expect(rows.map(({ id, up, down }) => [id, up, down])).toEqual([
    ['m3', undefined, 'm1'],
    ['m2', 'm3', 'first'],
    ['m1', 'm2', undefined],
  ]);
});

test('an image is turned to an angle about its middle', () => {
  const edit = turnEdit(IMAGE, 30);
  if (edit.edit !== 'change image' || !edit.to.placement) throw new Error('a turn changes the placement');
  const turned = onTheGround({ ...IMAGE, placement: edit.to.placement });
  expect(turned.turnedDegrees).toBe(30);
  expect(turned.width).toBeCloseTo(1200, 9);
});

test('degrees are read as people type them', () => {
  expect(['12.5', '-3°', '−3', '0', '12,5'].map(typedDegrees)).toEqual([12.5, -3, -3, 0, 12.5]);
  expect(['', 'up', '400', '1e2'].map(typedDegrees)).toEqual([undefined, undefined, undefined, undefined]);
  expect(opacityEdit('m1', 35)).toEqual({ edit: 'change image', image: 'm1', to: { opacity: 0.35 } });
});
