import type { HoleFigures } from '@loopwright/analysis';
import type { Hole, Routing } from '@loopwright/model';
import { expect, test } from 'vitest';
import { fanOutline } from './fan-outline.ts';
import { greenOutline } from './hole-view.ts';
import { openHoleViews } from './hole-views.ts';
import { toScaleBar } from './scale-bar.ts';

const hole: Hole = {
  id: 'h1',
  seat: { in: 'loop', loop: 'l1', key: 'a' },
  tees: { back: { x: 0, y: 0 } },
  turnPoints: [],
  green: { centre: { x: 100, y: 300 }, length: 40, width: 20, bearing: 0 },
  par: { men: 'by length', women: 'by length' },
  verdict: 'undecided',
  pinned: [],
  waypoints: [],
  relations: [],
};
const figures: HoleFigures = {
  id: 'h1',
  centreline: [
    { x: 0, y: 0 },
    { x: 100, y: 300 },
  ],
  tees: [],
  par: { men: 4, women: 4 },
  parsByLength: { men: [4], women: [4] },
  bearing: 0,
  bends: [],
  corridor: [],
  corridorStations: [],
  relations: [],
  fans: [],
};
const routing = (holes: readonly Hole[]): Routing => ({
  id: 'r1',
  name: 'A',
  locked: false,
  loops: [{ id: 'l1', name: 'Only', holes: ['h1'] }],
  rounds: [],
  holes,
  spare: ['h2'],
});

test('a green pointing north is as long as it is to north and as wide to east', () => {
  const outline = greenOutline({ centre: { x: 0, y: 0 }, length: 40, width: 20, bearing: 0 });
  expect(Math.max(...outline.map(({ y }) => y))).toBeCloseTo(20, 9);
  expect(Math.max(...outline.map(({ x }) => x))).toBeCloseTo(10, 9);
});

test('a green turned a quarter clockwise is long to the east', () => {
  const outline = greenOutline({ centre: { x: 5, y: 5 }, length: 40, width: 20, bearing: Math.PI / 2 });
  expect(Math.max(...outline.map(({ x }) => x))).toBeCloseTo(25, 9);
  expect(Math.max(...outline.map(({ y }) => y))).toBeCloseTo(15, 9);
});

test('an outline of its own moves with the centre', () => {
  const outline = [
    { x: -1, y: 0 },
    { x: 1, y: 0 },
    { x: 0, y: 2 },
  ];
  const drawn = greenOutline({ centre: { x: 10, y: 20 }, length: 2, width: 2, bearing: 0, outline });
  expect(drawn).toEqual([
    { x: 9, y: 20 },
    { x: 11, y: 20 },
    { x: 10, y: 22 },
  ]);
});

test('a hole nobody touched keeps its view; the list keeps its identity when nothing changed', () => {
  const views = openHoleViews();
  const other = { ...hole, id: 'h2', seat: { in: 'spare', key: 'a' } } as const;
  const otherFigures = { ...figures, id: 'h2' };
  const holes = new Map([
    ['h1', figures],
    ['h2', otherFigures],
  ]);
  const analysis = { routing: 'r1', holes, walks: [], loops: [], rounds: [], findings: [] };
  const first = views(routing([hole, other]), analysis);
  expect(first.map(({ label, spare }) => [label, spare])).toEqual([
    ['1', false],
    ['S1', true],
  ]);
  expect(views(routing([hole, other]), analysis)).toBe(first);
  const moved = { ...figures };
  const second = views(routing([{ ...hole }, other]), { ...analysis, holes: new Map([...holes, ['h1', moved]]) });
  expect(second[0]).not.toBe(first[0]);
  expect(second[1]).toBe(first[1]);
});

test('the scale bar is a round length of the unit that fits', () => {
  expect(toScaleBar(0.5, 'metres', 150)).toEqual({ pixels: 100, label: '200 m' });
  // 200 yd are 182.88 m by the definition of the yard.
  expect(toScaleBar(0.5, 'yards', 150)).toEqual({ pixels: 91.44, label: '200 yd' });
});

test('a fan reaches as far as it says, the same angle to both sides', () => {
  const points = fanOutline({
    from: { x: 0, y: 0 },
    towards: { x: 0, y: 1 },
    reach: 100,
    halfAngleDegrees: 30,
    shot: 'tee shot',
    severity: 'stop',
  });
  const [left, right] = [points.slice(2, 4), points.slice(-2)];
  // Sheet units: y turned over. 100 m at 30° off north is 50 m to the side and 86.60 m on.
  expect(left[0]).toBeCloseTo(-50, 6);
  expect(right[0]).toBeCloseTo(50, 6);
  expect(left[1]).toBeCloseTo(-86.602540378, 6);
});
