import type { Plan, SitePoint, Sketch } from '@loopwright/model';
import { expect, test } from 'vitest';
import { smallPlan } from '../fixtures/small-plan.ts';
import { twoPages } from '../fixtures/two-pages.ts';
import { openPlan } from '../plan-document.ts';
import { createPlanState } from '../server/create-plan-state.ts';
import type { OutlineOf } from './site-edit.ts';

const at = (x: number, y: number): SitePoint => ({ x, y });
const SQUARE = [at(0, 0), at(90, 0), at(90, 90), at(0, 90)];
const POND = { of: 'feature', feature: 'pond', ring: 0 } as const;
const sketch = (id: string, shape: Sketch['shape']): Sketch => ({ id, shape, by: 'Ann', ink: 0, kept: false });

/** A site with an outline or line of every sort. */
function drawn(): Plan {
  const plan = smallPlan();
  const [house] = plan.site.bases;
  const [pond] = plan.site.features;
  if (!house || !pond) throw new Error('the small plan has both');
  return {
    ...plan,
    site: {
      ...plan.site,
      boundary: { outlines: [SQUARE, SQUARE.map(({ x, y }) => at(x + 200, y))], inner: [], tolerance: 1 },
      bases: [{ ...house, footprints: [SQUARE] }],
      features: [
        { ...pond, geometry: { type: 'area', rings: [SQUARE, SQUARE.map(({ x, y }) => at(x / 3 + 9, y / 3 + 9))] } },
        { ...pond, id: 'road', kind: 'public road', geometry: { type: 'line', points: SQUARE.slice(0, 3) } },
        { ...pond, id: 'tree', kind: 'landmark', geometry: { type: 'point', at: at(5, 5) } },
      ],
      sketches: [
        sketch('line', { kind: 'measured line', points: SQUARE.slice(0, 2) }),
        sketch('area', { kind: 'measured area', ring: SQUARE.slice(0, 3) }),
        sketch('ring', { kind: 'ring', radius: 30, about: { at: at(5, 5) } }),
        sketch('follows', { kind: 'ring', radius: 30, about: { routing: 'a', hole: 'h1', part: 'green' } }),
      ],
    },
  };
}
const open = () => openPlan(createPlanState(drawn()));
type Page = ReturnType<typeof open>;
const rings = (plan: Page) => {
  const geometry = plan.read().site.features.find(({ id }) => id === 'pond')?.geometry;
  return geometry?.type === 'area' ? geometry.rings : [];
};

test.each<OutlineOf>([
  { of: 'boundary', part: 'outlines', ring: 0 },
  { of: 'base', base: 'house', ring: 0 },
  POND,
  { of: 'feature', feature: 'road', ring: 0 },
  { of: 'sketch', sketch: 'line' },
  { of: 'sketch', sketch: 'area' },
])('a corner of %j is moved, one added and one taken out, and undo goes back the same way', (outline) => {
  const plan = open();
  const before = plan.read();
  expect(plan.edit({ edit: 'move vertex', outline, from: at(90, 0), to: at(95, -5) })).toBe('done');
  expect(JSON.stringify(plan.read())).toContain('{"x":95,"y":-5}');
  expect(plan.edit({ edit: 'add vertex', outline, after: at(0, 0), at: at(40, -9) })).toBe('done');
  expect(JSON.stringify(plan.read())).toContain('{"x":0,"y":0},{"x":40,"y":-9},{"x":95,"y":-5}');
  expect(plan.edit({ edit: 'remove vertex', outline, at: at(95, -5) })).toBe('done');
  expect(JSON.stringify(plan.read())).not.toContain('{"x":95,"y":-5}');
  for (let step = 0; step < 3; step++) plan.undo();
  expect(plan.read()).toEqual(before);
});

test('a corner is known by where it lay to the millimetre; whoever comes second finds it gone', () => {
  const { ada, grace, meet } = twoPages(drawn());
  ada.edit({ edit: 'move vertex', outline: POND, from: at(90, 0), to: at(99, 0) });
  meet();
  expect(grace.edit({ edit: 'move vertex', outline: POND, from: at(90, 0), to: at(80, 0) })).toBe('gone');
  expect(grace.edit({ edit: 'move vertex', outline: POND, from: at(99.0004, 0), to: at(80, 0) })).toBe('done');
  expect(grace.edit({ edit: 'remove vertex', outline: POND, at: at(99, 0) })).toBe('gone');
  expect(grace.edit({ edit: 'add vertex', outline: POND, after: at(99, 0), at: at(1, 1) })).toBe('gone');
});

test('an outline changed by two people one after the other keeps both changes', () => {
  const { ada, grace, meet } = twoPages(drawn());
  ada.edit({ edit: 'move vertex', outline: POND, from: at(90, 0), to: at(99, 0) });
  meet();
  grace.edit({ edit: 'move vertex', outline: POND, from: at(0, 90), to: at(0, 99) });
  meet();
  expect(rings(ada)[0]).toEqual([at(0, 0), at(99, 0), at(90, 90), at(0, 99)]);
  expect(ada.undo()).toMatchObject({ kind: 'undone', overtaken: 1 }); // the outline is one value: it is hers no more
  expect(rings(ada)[0]?.[3]).toEqual(at(0, 99));
});

test('of two changes of one outline at once, one stands whole on both pages, and undo of the other says overtaken', () => {
  const { ada, grace, meet } = twoPages(drawn());
  ada.edit({ edit: 'move vertex', outline: POND, from: at(90, 0), to: at(99, 0) });
  grace.edit({ edit: 'move vertex', outline: POND, from: at(0, 90), to: at(0, 99) });
  meet();
  expect(rings(ada)).toEqual(rings(grace));
  const adaWon = rings(ada)[0]?.[1]?.x === 99;
  expect(rings(ada)[0]).toEqual(
    adaWon ? [at(0, 0), at(99, 0), at(90, 90), at(0, 90)] : [at(0, 0), at(90, 0), at(90, 90), at(0, 99)],
  );
  const [winner, loser] = adaWon ? [ada, grace] : [grace, ada];
  expect(loser.undo()).toMatchObject({ overtaken: 1 });
  expect(winner.undo()).toMatchObject({ overtaken: 0 });
  meet();
  expect(rings(ada)[0]).toEqual(SQUARE);
});

test('somebody removes the feature another is dragging: the drag ends as gone, and its undo brings nothing back', () => {
  const { ada, grace, meet } = twoPages(drawn());
  const drag = { edit: 'move vertex', outline: POND, from: at(90, 0), to: at(99, 0) } as const;
  ada.readWith([drag]);
  grace.edit({ edit: 'remove features', features: ['pond'] });
  meet();
  expect(ada.readWith([drag])).toEqual(ada.read());
  expect(ada.edit(drag)).toBe('gone');
  expect(ada.undo().kind).toBe('nothing');
});

test('at once: a corner moved and the feature removed; undo of the removal shows the moved corner', () => {
  const { ada, grace, meet } = twoPages(drawn());
  ada.edit({ edit: 'move vertex', outline: POND, from: at(90, 0), to: at(99, 0) });
  grace.edit({ edit: 'remove features', features: ['pond'] });
  meet();
  expect(rings(ada)).toEqual([]);
  expect(ada.undo()).toMatchObject({ kind: 'undone', overtaken: 0 }); // on a feature that is not shown: it does no harm
  ada.redo();
  grace.undo();
  meet();
  expect(rings(ada)[0]?.[1]).toEqual(at(99, 0));
});

test('an outline keeps three corners and a line two points', () => {
  const plan = open();
  const area = { of: 'sketch', sketch: 'area' } as const;
  expect(plan.edit({ edit: 'remove vertex', outline: area, at: at(90, 0) })).toBe('nothing');
  expect(plan.edit({ edit: 'move vertex', outline: area, from: at(90, 0), to: at(0, 0) })).toBe('nothing');
  const line = { of: 'sketch', sketch: 'line' } as const;
  expect(plan.edit({ edit: 'remove vertex', outline: line, at: at(90, 0) })).toBe('nothing');
  expect(plan.edit({ edit: 'move vertex', outline: line, from: at(90, 0), to: at(0, 0) })).toBe('nothing');
});

test('a corner put on the one beside it becomes one with it; one added there is none', () => {
  const plan = open();
  expect(plan.edit({ edit: 'add vertex', outline: POND, after: at(90, 0), at: at(90, 90) })).toBe('nothing');
  expect(plan.edit({ edit: 'move vertex', outline: POND, from: at(90, 0), to: at(90, 90) })).toBe('done');
  expect(rings(plan)[0]).toEqual([at(0, 0), at(90, 90), at(0, 90)]);
  const road = { of: 'feature', feature: 'road', ring: 0 } as const;
  expect(plan.edit({ edit: 'move vertex', outline: road, from: at(0, 0), to: at(90, 0) })).toBe('done');
  expect(plan.read().site.features[1]?.geometry).toEqual({ type: 'line', points: [at(90, 0), at(90, 90)] });
});

test('behind the last bend of a line a new one makes it longer', () => {
  const plan = open();
  const outline = { of: 'feature', feature: 'road', ring: 0 } as const;
  plan.edit({ edit: 'add vertex', outline, after: at(90, 90), at: at(90, 200) });
  expect(plan.read().site.features[1]?.geometry).toMatchObject({ points: [...SQUARE.slice(0, 3), at(90, 200)] });
});

test('an outline of five hundred corners takes no more', () => {
  const plan = open();
  const ring = Array.from({ length: 500 }, (_, index) => at(index, index % 2));
  plan.edit({ edit: 'change feature', feature: 'pond', to: { geometry: { type: 'area', rings: [ring] } } });
  expect(plan.edit({ edit: 'add vertex', outline: POND, after: at(0, 0), at: at(0.5, 9) })).toBe('nothing');
  expect(plan.edit({ edit: 'remove vertex', outline: POND, at: at(7, 1) })).toBe('done');
  expect(plan.edit({ edit: 'add vertex', outline: POND, after: at(0, 0), at: at(0.5, 9) })).toBe('done');
});

test('an area moved whole takes along what is cut out of it; a hole in it moves by itself', () => {
  const plan = open();
  const [outer, cut] = rings(plan);
  plan.edit({ edit: 'move outline', outline: POND, by: at(10, 20) });
  expect(rings(plan)).toEqual([outer, cut].map((ring) => ring?.map(({ x, y }) => at(x + 10, y + 20))));
  plan.edit({ edit: 'move outline', outline: { ...POND, ring: 1 }, by: at(-10, -20) });
  expect(rings(plan)[1]).toEqual(cut);
  expect(plan.edit({ edit: 'move outline', outline: POND, by: at(2_000_000, 0) })).toBe('nothing');
  expect(plan.edit({ edit: 'move outline', outline: POND, by: at(Number.NaN, 0) })).toBe('nothing');
  expect(plan.edit({ edit: 'move outline', outline: { ...POND, ring: 7 }, by: at(1, 1) })).toBe('gone');
});

test('a single place is moved as an outline of one point; a ring about a part of a hole follows that', () => {
  const plan = open();
  const tree = { of: 'feature', feature: 'tree', ring: 0 } as const;
  plan.edit({ edit: 'move outline', outline: tree, by: at(1, 2) });
  plan.edit({ edit: 'move vertex', outline: tree, from: at(6, 7), to: at(8, 8) });
  expect(plan.read().site.features[2]?.geometry).toEqual({ type: 'point', at: at(8, 8) });
  expect(plan.edit({ edit: 'add vertex', outline: tree, after: at(8, 8), at: at(9, 9) })).toBe('nothing');
  expect(plan.edit({ edit: 'move outline', outline: { of: 'sketch', sketch: 'ring' }, by: at(1, 1) })).toBe('done');
  expect(plan.read().site.sketches?.[2]?.shape).toMatchObject({ about: { at: at(6, 6) } });
  expect(plan.edit({ edit: 'move outline', outline: { of: 'sketch', sketch: 'follows' }, by: at(1, 1) })).toBe('gone');
});
