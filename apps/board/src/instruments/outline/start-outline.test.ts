import type { NamedEdit } from '@loopwright/document';
import type { SitePoint } from '@loopwright/model';
import { expect, test } from 'vitest';
import { mouseAt, openFakeBench } from '../fake-bench.ts';
import type { Running } from '../instrument.ts';
import { startOutline } from './start-outline.ts';

const at = (x: number, y: number): SitePoint => ({ x, y });
const edit = (points: readonly SitePoint[]): NamedEdit => ({
  edit: 'add features',
  features: [
    {
      id: 'f1',
      kind: 'water',
      geometry: { type: 'area', rings: [points] },
      allows: { carry: true, walk: false, mow: false, build: false },
      buffer: 0,
    },
  ],
});
const ringOf = (named: NamedEdit | undefined) =>
  named?.edit === 'add features' && named.features[0]?.geometry.type === 'area'
    ? named.features[0].geometry.rings[0]
    : undefined;

function openArea(shape: 'area' | 'line' = 'area') {
  const board = openFakeBench();
  const results: string[] = [];
  const running = startOutline(board.bench, {
    shape: () => shape,
    begins: () => 'Press on the first corner.',
    editFor: edit,
    written: (result) => results.push(result),
  });
  return { ...board, running, results };
}

function press(running: Running, ...places: readonly (readonly [number, number])[]) {
  for (const [x, y] of places) running.press(mouseAt(x, y), undefined)?.end(mouseAt(x, y));
}

test('an outline is shown while it grows, and a press on its first corner writes it', () => {
  const { running, shown, written, results } = openArea();
  press(running, [0, 0], [100, 0]);
  expect(shown()).toBeUndefined();
  running.hover(mouseAt(100, 80));
  expect(ringOf(shown())).toEqual([at(0, 0), at(100, 0), at(100, 80)]);
  press(running, [100, 80], [0, 80]);
  running.hover(mouseAt(5, 3));
  expect(running.picture.get().atPointer?.at(-1)).toBe('closes the outline');
  press(running, [5, 3]);
  expect(ringOf(written[0])).toEqual([at(0, 0), at(100, 0), at(100, 80), at(0, 80)]);
  expect(results).toEqual(['done']);
  expect(running.placed()).toEqual([]);
});

test('an outline may cross itself on the way, but is not written like that, and nothing is lost', () => {
  const { running, written, said } = openArea();
  press(running, [0, 0], [100, 100], [100, 0], [0, 100]);
  running.finish?.();
  expect(written).toEqual([]);
  expect(said.at(-1)).toMatch(/crosses or touches itself/);
  expect(running.placed()).toHaveLength(4);
  running.back?.();
  running.back?.();
  press(running, [0, 100]);
  running.finish?.();
  expect(ringOf(written[0])).toEqual([at(0, 0), at(100, 100), at(0, 100)]);
});

test('two corners are no outline, two points are a line', () => {
  const area = openArea();
  press(area.running, [0, 0], [50, 0]);
  area.running.finish?.();
  expect(area.written).toEqual([]);
  const line = openArea('line');
  press(line.running, [0, 0], [50, 0]);
  line.running.finish?.();
  expect(ringOf(line.written[0])).toEqual([at(0, 0), at(50, 0)]);
});

test('five hundred corners are the most, and others are shown fewer of them', () => {
  const { running, said, shown } = openArea();
  const places = Array.from({ length: 500 }, (_, index) => [index * 10, (index * index) / 50] as const);
  press(running, ...places);
  expect(running.placed()).toHaveLength(500);
  expect(JSON.stringify(shown()).length).toBeLessThan(4000);
  press(running, [0, 9000]);
  expect(running.placed()).toHaveLength(500);
  expect(said.at(-1)).toMatch(/^500 points are the most/);
  expect(running.enter?.('120 @ 90')).toMatch(/^500 points are the most/);
});

test('a side is typed by length and bearing, a corner by its coordinates; what is wrong is said', () => {
  const { running } = openArea();
  expect(running.enter?.('120')).toMatch(/Place the first point/);
  expect(running.enter?.('10, 20')).toBeUndefined();
  expect(running.enter?.('120 @ 90')).toBeUndefined();
  expect(running.enter?.('a lot')).toMatch(/no length or place/);
  const [first, second] = running.placed();
  expect(first).toEqual(at(10, 20));
  expect(second?.x).toBeCloseTo(130, 9);
  expect(second?.y).toBeCloseTo(20, 9);
});

test('a press taken away places nothing, Esc puts all of it back', () => {
  const { running, shown } = openArea();
  press(running, [0, 0], [100, 0]);
  running.press(mouseAt(100, 100), undefined)?.cancel();
  expect(running.placed()).toHaveLength(2);
  expect(running.letGo()).toBe(true);
  expect(shown()).toBeUndefined();
  expect(running.letGo()).toBe(false);
});
