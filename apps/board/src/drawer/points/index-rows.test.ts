import type { WalkFigures } from '@loopwright/analysis';
import { presetOf, type Site } from '@loopwright/model';
import { expect, test } from 'vitest';
import { namesOf } from '../../reading/names.ts';
import { ANALYSIS, PLAN, ROUTING } from '../../reading/two-holes.test-plan.ts';
import { thingRows } from './thing-rows.ts';
import { walkRows } from './walk-rows.ts';

const SITE: Site = {
  ...PLAN.site,
  marks: [{ id: 'm1', kind: 'green site', at: { x: 40, y: 60 }, verdict: 'natural', note: 'on the knoll' }],
  features: [
    {
      id: 'f1',
      kind: 'water',
      name: 'Mill pond',
      geometry: {
        type: 'area',
        rings: [
          [
            { x: 0, y: 0 },
            { x: 100, y: 0 },
            { x: 100, y: 50 },
            { x: 0, y: 50 },
          ],
        ],
      },
      allows: presetOf('water').allows,
      buffer: 0,
    },
  ],
};
const GROUND = { plan: { ...PLAN, site: SITE }, routing: ROUTING, analysis: ANALYSIS };

test('everything on the land is listed with its facts and where it lies', () => {
  expect(thingRows(GROUND, 'metres').map(({ title, facts, at }) => [title, facts, at])).toEqual([
    ['Clubhouse', 'base', { x: 0, y: 0 }],
    ['Mill pond', 'water; 5,000 m²; 4 vertices', { x: 50, y: 25 }],
    ['The natural green site', 'site mark; natural; on the knoll', { x: 40, y: 60 }],
  ]);
});

test('a typed place moves all of a thing there', () => {
  const [, pond, mark] = thingRows(GROUND, 'metres');
  expect(pond?.moved?.({ x: 60, y: 25 })).toEqual({
    edit: 'move outline',
    outline: { of: 'feature', feature: 'f1', ring: 0 },
    by: { x: 10, y: 0 },
  });
  expect(mark?.moved?.({ x: 41, y: 60 })).toEqual({ edit: 'change mark', mark: 'm1', to: { at: { x: 41, y: 60 } } });
});

const WALK: WalkFigures = {
  key: 'h1>h2',
  loop: 'front',
  from: { hole: 'h1' },
  to: { hole: 'h2' },
  path: [
    { x: 0, y: 0 },
    { x: 0, y: 80 },
  ],
  distance: 80,
  walkBack: 0,
  time: 60,
  crossings: [
    { at: { x: 0, y: 10 }, what: { kind: 'line of play', hole: 'h2', where: 'behind', ahead: 0 } },
    { at: { x: 0, y: 20 }, what: { kind: 'feature', feature: 'f1' } },
  ],
};
const ledBy = (locked: boolean) => ({
  ...ROUTING,
  locked,
  holes: ROUTING.holes.map((hole) => (hole.id === 'h1' ? { ...hole, waypoints: [{ x: 5, y: 40 }] } : hole)),
});

test('a walk says its length and what it crosses; its waypoints are moved by typing', () => {
  const names = namesOf(GROUND.plan, ROUTING, 'metres');
  const [row] = walkRows([WALK], ledBy(false), names);
  expect(row?.title).toBe('Walk from green 1 to tee 2');
  expect(row?.facts).toMatch(/^80 m; crosses the line of hole 2 behind; crosses .*Mill pond/);
  expect(row?.under?.[0]?.moved?.({ x: 6, y: 40 })).toEqual({
    edit: 'set waypoints',
    routing: 'a',
    hole: 'h1',
    waypoints: [{ x: 6, y: 40 }],
  });
});

test('on a locked routing waypoints are read, not moved', () => {
  const [row] = walkRows([WALK], ledBy(true), namesOf(GROUND.plan, ROUTING, 'metres'));
  expect(row?.under?.[0]?.at).toEqual({ x: 5, y: 40 });
  expect(row?.under?.[0]?.moved).toBeUndefined();
});
