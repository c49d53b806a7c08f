import type { Hole, Plan, SitePoint } from '@loopwright/model';
import { expect, test } from 'vitest';
import { PLAN, ROUTING } from '../reading/two-holes.test-plan.ts';
import { openViewpoint } from './viewpoint.ts';

/** The sample within a boundary so far about it. */
function boundedBy(metres: number): Plan {
  const corner = (x: number, y: number): SitePoint => ({ x: x * metres, y: y * metres });
  const outline = [corner(-1, -1), corner(1, -1), corner(1, 1), corner(-1, 1)];
  return { ...PLAN, site: { ...PLAN.site, boundary: { outlines: [outline], inner: [], tolerance: 0 } } };
}

const opened = () => {
  const viewpoint = openViewpoint();
  viewpoint.resize({ width: 800, height: 600 });
  return viewpoint;
};

test('a boundary far about the holes is left to the whole site', () => {
  const viewpoint = opened();
  viewpoint.firstLook(boundedBy(5000), ROUTING);
  const near = viewpoint.view.get().scale;
  viewpoint.fit(boundedBy(5000), ROUTING);
  // 10 km in 600 px less the paper on both sides.
  expect(viewpoint.view.get().scale).toBeCloseTo(540 / 10_000, 9);
  expect(near).toBeGreaterThan(3 * viewpoint.view.get().scale);
});

test('until somebody moves the drawing a window that changes is filled again', () => {
  const viewpoint = opened();
  viewpoint.fit(boundedBy(1000), ROUTING);
  viewpoint.resize({ width: 400, height: 600 });
  expect(viewpoint.view.get().scale).toBeCloseTo((400 - 44 - 60) / 2000, 9);
  viewpoint.pan({ x: 10, y: 0 });
  viewpoint.resize({ width: 800, height: 600 });
  expect(viewpoint.view.get().scale).toBeCloseTo((400 - 44 - 60) / 2000, 9);
});

test('a spare hole far off does not make the round small', () => {
  const [first] = ROUTING.holes;
  if (!first) throw new Error('the sample has no hole');
  const lost: Hole = { ...first, id: 'lost', seat: { in: 'spare', key: 'z' }, tees: { back: { x: 40_000, y: 0 } } };
  const withLost = { ...ROUTING, holes: [...ROUTING.holes, lost], spare: ['lost'] };
  const [alone, together] = [opened(), opened()];
  alone.firstLook(PLAN, ROUTING);
  together.firstLook(PLAN, withLost);
  expect(together.view.get()).toEqual(alone.view.get());
});

test('a site where nothing is laid out yet is seen whole, not its clubhouse alone', () => {
  const viewpoint = opened();
  const bare = { ...ROUTING, holes: [], loops: [], rounds: [] };
  viewpoint.firstLook(boundedBy(500), bare);
  // 1 km in 600 px less the paper on both sides.
  expect(viewpoint.view.get().scale).toBeCloseTo(540 / 1000, 9);
});

test('a clubhouse on bare land is seen with 300 m of ground about it', () => {
  const viewpoint = opened();
  const bases = [{ id: 'b', name: 'Clubhouse', apron: { x: 10, y: 20 }, footprints: [] }];
  viewpoint.firstLook({ ...PLAN, site: { ...PLAN.site, bases } }, { ...ROUTING, holes: [] });
  expect(viewpoint.view.get().scale).toBeCloseTo(540 / 300, 9);
});
