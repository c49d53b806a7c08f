import type { MarkUses } from '@loopwright/analysis';
import type { Plan } from '@loopwright/model';
import { expect, test } from 'vitest';
import { PLAN, ROUTING } from '../../../reading/two-holes.test-plan.ts';
import { LAND } from '../../../tools/land/land.test-site.ts';
import { markRows } from './marks-view.ts';

const plan: Plan = { ...PLAN, site: LAND, routings: [ROUTING, { ...ROUTING, id: 'b', name: 'Routing B' }] };
const uses: MarkUses = new Map([
  [
    'm1',
    [
      { routing: 'a', hole: 'h2', part: 'green', distance: 3.2 },
      { routing: 'b', hole: 'h1', part: 'green', distance: 0.4 },
    ],
  ],
  ['m2', []],
]);
const ids = (filter: Parameters<typeof markRows>[2]) => markRows(plan, uses, filter, 'metres').map(({ id }) => id);

test('each mark says which hole of which routing uses it, and how far off', () => {
  const [green, tee] = markRows(plan, uses, 'all', 'metres');
  expect(green?.what).toBe('natural; green of hole 2, Routing A, 3 m off; green of hole 1, Routing B');
  expect(tee?.what).toBe('needs work; no hole uses it yet');
});

test('with one routing its name is not said', () => {
  const one = { ...plan, routings: [ROUTING] };
  const only: MarkUses = new Map([['m1', [{ routing: 'a', hole: 'h2', part: 'landing area', distance: 0 }]]]);
  expect(markRows(one, only, 'all', 'metres')[0]?.what).toBe('natural; landing area of hole 2');
});

test('the list shows all, those no hole uses yet, or those of one routing', () => {
  expect(ids('all')).toEqual(['m1', 'm2']);
  expect(ids('unused')).toEqual(['m2']);
  expect(ids('routing b')).toEqual(['m1']);
  expect(ids('routing gone')).toEqual([]);
});
