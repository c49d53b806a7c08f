import type { ImageLayer, Plan } from '@loopwright/model';
import { expect, test } from 'vitest';
import { PLAN } from '../../reading/two-holes.test-plan.ts';
import { mouseAt, openFakeBench } from '../fake-bench.ts';
import { startLayOver } from './lay-over.ts';

const LOWER: ImageLayer = {
  id: 'm1',
  blob: '0'.repeat(64),
  widthPixels: 1000,
  heightPixels: 1000,
  placement: [2, 0, -1000, 0, -2, 1000],
  opacity: 1,
  scaledBy: 'two points',
};
const UPPER: ImageLayer = { ...LOWER, id: 'm2', placement: [1, 0, 0, 0, -1, 1000], scaledBy: 'guess' };
const plan: Plan = { ...PLAN, site: { ...PLAN.site, images: [LOWER, UPPER] } };
const chosen = { thing: { kind: 'image', id: 'm2' } } as const;

test('two matches lay the chosen picture where it belongs, as one step', () => {
  const { bench, written, shown } = openFakeBench({ plan, selection: chosen });
  const running = startLayOver(bench);
  const match = (from: readonly [number, number], to: readonly [number, number]) => {
    for (const at of [from, to]) running.press(mouseAt(...at), undefined);
  };
  match([0, 0], [100, 100]); // its lower left corner: pixel (0, 1000)
  expect(shown()).toEqual({ edit: 'change image', image: 'm2', to: { placement: [1, 0, 100, 0, -1, 1100] } });
  // It is shown shifted: its lower right corner is pressed where it lies now.
  match([1100, 100], [600, 100]);
  running.finish?.();
  expect(written).toEqual([
    { edit: 'change image', image: 'm2', to: { placement: [0.5, 0, 100, 0, -0.5, 600], scaledBy: 'two points' } },
  ]);
});

test('a third match says how far off they are; a step back takes it away', () => {
  const { bench } = openFakeBench({ plan, selection: chosen });
  const running = startLayOver(bench);
  for (const [x, y] of [
    [0, 0],
    [0, 0],
    [1000, 0],
    [1000, 0],
    [1000, 1000],
    [1000, 1006],
  ] as const)
    running.press(mouseAt(x, y), undefined);
  expect(running.prompt.get()).toMatch(/^3 points, at most [1-4]\.\d m off/);
  expect(running.back?.()).toBe(true);
  expect(running.prompt.get()).toContain('fits both points');
  expect([running.letGo(), running.letGo()]).toEqual([true, false]);
});

test('two matches in one place are one, in words', () => {
  const { bench, said } = openFakeBench({ plan, selection: chosen });
  const running = startLayOver(bench);
  for (const [x, y] of [
    [0, 0],
    [50, 50],
    [500, 500],
    [52, 50],
  ] as const)
    running.press(mouseAt(x, y), undefined);
  expect(said.at(-1)).toContain('match in that place already');
});

test('one point of the picture has one place, in words', () => {
  const { bench, said, shown } = openFakeBench({ plan, selection: chosen });
  const running = startLayOver(bench);
  for (const [x, y] of [
    [0, 0],
    [50, 50],
    [50, 50],
    [500, 500],
  ] as const)
    running.press(mouseAt(x, y), undefined);
  expect(said.at(-1)).toContain('has its place already');
  expect(shown()).toEqual({ edit: 'change image', image: 'm2', to: { placement: [1, 0, 50, 0, -1, 1050] } });
});
