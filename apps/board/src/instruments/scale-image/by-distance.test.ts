import type { ImageLayer, Plan } from '@loopwright/model';
import { expect, test } from 'vitest';
import { PLAN } from '../../reading/two-holes.test-plan.ts';
import { mouseAt, openFakeBench } from '../fake-bench.ts';
import { startByDistance } from './by-distance.ts';

// 600 × 400 pixels of 2 m, about the origin.
const IMAGE: ImageLayer = {
  id: 'm1',
  blob: '0'.repeat(64),
  widthPixels: 600,
  heightPixels: 400,
  placement: [2, 0, -600, 0, -2, 400],
  opacity: 1,
  name: 'Aerial',
  scaledBy: 'guess',
};
const withImages = (...images: readonly ImageLayer[]): Plan => ({ ...PLAN, site: { ...PLAN.site, images } });
const press = (running: ReturnType<typeof startByDistance>, x: number, y: number) => {
  const at = mouseAt(x, y);
  running.press(at, undefined)?.end(at);
};

test('two points and the distance between them scale the picture; the first point stays', () => {
  const { bench, written, isAway } = openFakeBench({ plan: withImages(IMAGE) });
  const running = startByDistance(bench);
  press(running, 0, 0);
  press(running, 100, 0);
  expect(running.entry?.get()).toBe('Its true length');
  expect(running.enter?.('150 m')).toBeUndefined();
  expect(written).toEqual([
    { edit: 'change image', image: 'm1', to: { placement: [3, 0, -900, 0, -3, 600], scaledBy: 'two points' } },
  ]);
  expect([isAway(), bench.selection().thing]).toEqual([true, { kind: 'image', id: 'm1' }]);
});

test('what is typed is shown before it is written, and put back when it makes no sense', () => {
  const { bench, shown, written } = openFakeBench({ plan: withImages(IMAGE) });
  const running = startByDistance(bench);
  press(running, 0, 0);
  press(running, 100, 0);
  running.typing?.('50');
  expect(shown()).toMatchObject({ to: { placement: [1, 0, -300, 0, -1, 200] } });
  running.typing?.('50 miles');
  expect(shown()).toBeUndefined();
  expect(running.enter?.('nothing')).toContain('no distance');
  expect(running.enter?.('90000')).toContain('wide');
  expect(written).toEqual([]);
});

test('two equal points give no scale, in words', () => {
  const { bench, said } = openFakeBench({ plan: withImages(IMAGE) });
  const running = startByDistance(bench);
  press(running, 10, 10);
  press(running, 12, 10);
  expect(said.at(-1)).toContain('same place');
  expect(running.entry?.get()).toBeUndefined();
  expect(running.enter?.('100')).toContain('both ends');
});

test('without a picture there is nothing to scale; of several the uppermost under the pointer is meant', () => {
  const none = openFakeBench({ plan: withImages() });
  press(startByDistance(none.bench), 0, 0);
  expect(none.said.at(-1)).toContain('no picture');
  const small: ImageLayer = { ...IMAGE, id: 'm2', placement: [0.1, 0, 0, 0, -0.1, 40] };
  const two = openFakeBench({ plan: withImages(IMAGE, small) });
  press(startByDistance(two.bench), 10, 10);
  expect(two.bench.selection().thing).toEqual({ kind: 'image', id: 'm2' });
});

test('a step back takes the last end away, Esc both', () => {
  const { bench } = openFakeBench({ plan: withImages(IMAGE) });
  const running = startByDistance(bench);
  press(running, 0, 0);
  press(running, 100, 0);
  expect(running.back?.()).toBe(true);
  expect(running.picture.get().dots).toHaveLength(1);
  expect([running.letGo(), running.letGo(), running.back?.()]).toEqual([true, false, false]);
});

test('a scale at which the picture could not be kept is refused in words, and nothing is said to be done', () => {
  const fine: ImageLayer = {
    ...IMAGE,
    widthPixels: 30_000,
    heightPixels: 200,
    placement: [0.04, 0, -600, 0, -0.04, 4],
  };
  const { bench, said, written } = openFakeBench({ plan: withImages(fine) });
  const running = startByDistance(bench);
  press(running, 0, 0);
  press(running, 100, 0);
  expect(running.enter?.('0.5')).toContain('wide');
  expect([written, said]).toEqual([[], []]);
});
