import { expect, test } from 'vitest';
import type { FeatureView } from './feature-view.ts';
import type { HoleView } from './hole-view.ts';
import { type Label, placeLabels } from './label-placement.ts';
import { keepSteady, layLabels } from './labels.ts';

const label = (id: string, places: Label['places'], when: Label['when'] = 'always'): Label => ({
  id,
  places,
  halfWidth: 10,
  halfHeight: 10,
  when,
});
const HERE = { x: 0, y: 0 };
const THERE = { x: 50, y: 0 };

test('a label gives way to one listed before it', () => {
  const placed = placeLabels([label('number', [HERE]), label('sign', [{ x: 5, y: 5 }, THERE])]);
  expect(placed.get('number')).toBe(HERE);
  expect(placed.get('sign')).toBe(THERE);
});

test('where there is no room a name is left out, a number never', () => {
  const placed = placeLabels([
    label('first', [HERE]),
    label('name', [HERE], 'if there is room'),
    label('second', [HERE]),
  ]);
  expect(placed.has('name')).toBe(false);
  expect(placed.get('second')).toBe(HERE);
});

const hole = (id: string, x: number): HoleView => ({
  id,
  label: id,
  spare: false,
  centreline: [],
  line: [],
  corridor: [],
  tees: [],
  turns: [],
  numberPlaces: [
    { x, y: 0 },
    { x, y: 100 },
  ],
  pinned: [],
  fans: [],
});
const wood: FeatureView = {
  id: 'wood',
  manner: 'trees',
  kind: 'trees',
  areas: [],
  label: 'alder wood',
  labelAt: { x: 0, y: 0 },
  across: 200,
};

test('numbers of holes that lie on each other stand apart', () => {
  const { numbers } = layLabels([hole('1', 0), hole('2', 3)], [], [], [], 1);
  expect(numbers.get('1')).toEqual({ x: 0, y: 0 });
  expect(numbers.get('2')).toEqual({ x: 3, y: 100 });
});

test('a name never covers a hole number', () => {
  const { names, numbers } = layLabels([hole('1', 0)], [], [wood], [], 1);
  const [name] = names;
  expect(numbers.get('1')).toEqual({ x: 0, y: 0 });
  if (name) expect(Math.abs(name.at.y)).toBeGreaterThanOrEqual(13);
});

test('a name wider than what it names is left out from far away', () => {
  expect(layLabels([], [], [wood], [], 1).names).toHaveLength(1);
  expect(layLabels([], [], [wood], [], 0.1).names).toHaveLength(0);
});

test('a place that moved less than can be seen stays the same object', () => {
  const before = layLabels([hole('1', 0)], [], [], [], 1);
  const after = keepSteady(before, layLabels([hole('1', 0.01)], [], [], [], 1), 1);
  expect(after.numbers.get('1')).toBe(before.numbers.get('1'));
});
