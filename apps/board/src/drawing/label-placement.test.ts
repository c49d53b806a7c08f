import { type CanvasPoint, type SitePoint, seededRandom } from '@loopwright/model';
import { expect, test } from 'vitest';
import type { FeatureView } from './feature-view.ts';
import type { HoleView } from './hole-view.ts';
import { type Label, placeLabels, placesAround } from './label-placement.ts';
import { keepSteady, layLabels } from './labels.ts';
import { openLabels } from './open-labels.ts';

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

test('a sign stands beside the green it is about, and never on a number', () => {
  const green = { at: { x: 0, y: 300 }, outline: [], reach: 12 };
  const holes = [{ ...hole('1', 0), green }];
  const on = (key: string, y: number) => ({ key, severity: 'stop', at: { x: 0, y }, holes: [] }) as const;
  const { findings, numbers } = layLabels(holes, [on('at the green', 300), on('at the number', 0)], [], [], 1);
  const away = (key: string, from: SitePoint) => {
    const at = findings.get(key) ?? from;
    return Math.max(Math.abs(at.x - from.x), Math.abs(at.y - from.y));
  };
  // Half a sign is 8 px: clear of 12 m of green at 1 px a metre, and of a disc of 11.5 px.
  expect(away('at the green', green.at)).toBeGreaterThanOrEqual(12 + 8);
  expect(away('at the number', numbers.get('1') ?? { x: 99, y: 99 })).toBeGreaterThanOrEqual(11.5 + 8);
});

test('while somebody drags, names stay where they stand; at rest they make room again', () => {
  const labelsOf = openLabels();
  const over = { holes: [hole('1', wood.labelAt.x)], findings: [], features: [wood], symbols: [], scale: 1 };
  const before = labelsOf({ ...over, holes: [hole('1', 5000)] }, 'at rest');
  const during = labelsOf(over, 'dragging');
  expect(during.names).toBe(before.names);
  expect(during.numbers).not.toEqual(before.numbers);
  expect(labelsOf(over, 'at rest').names).not.toEqual(before.names);
});

test('against every other box: near, far and large ones are told apart as by comparing all with all', () => {
  const random = seededRandom(11);
  const labels = Array.from({ length: 150 }, (_, index): Label => {
    const at = { x: -300 + 900 * random(), y: -200 + 700 * random() };
    const size = index % 20 === 0 ? 400 : 4 + 30 * random();
    return {
      id: `${index}`,
      places: placesAround(at, 30),
      halfWidth: size,
      halfHeight: size / 2,
      when: index % 3 === 0 ? 'always' : 'if there is room',
    };
  });
  const boxes: { readonly at: CanvasPoint; readonly label: Label }[] = [];
  const covers = (label: Label, at: CanvasPoint) =>
    boxes.filter(
      ({ at: other, label: { halfWidth, halfHeight } }) =>
        Math.abs(other.x - at.x) < halfWidth + label.halfWidth &&
        Math.abs(other.y - at.y) < halfHeight + label.halfHeight,
    ).length;
  const expected = new Map<string, CanvasPoint>();
  for (const label of labels) {
    const counts = label.places.map((at) => covers(label, at));
    const least = Math.min(...counts);
    const at = label.places[counts.indexOf(least)];
    if (!at || (least > 0 && label.when !== 'always')) continue;
    expected.set(label.id, at);
    boxes.push({ at, label });
  }
  expect(placeLabels(labels)).toEqual(expected);
});
