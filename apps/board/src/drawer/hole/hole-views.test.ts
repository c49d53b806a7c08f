import { expect, test } from 'vitest';
import { ANALYSIS, PLAN, ROUTING } from '../../reading/two-holes.test-plan.ts';
import { toSeveral } from './several-view.ts';
import { toTeeRows } from './tees-view.ts';

const shown = { plan: PLAN, routing: ROUTING, analysis: ANALYSIS };

test('several holes are summed as a card is: each rounded, then added', () => {
  // 365.76 m are 400 yd; 150 m are 164.04, so 164.
  const view = toSeveral(shown, { units: 'yards', teeSet: 'back' }, ['h1', 'h2']);
  expect(view).toEqual({ together: 'par 7, 564 yd together', verdicts: '1 keeper, 1 undecided', pinned: 0 });
});

test('every tee set of the board is listed: placed, proposed, or not there yet', () => {
  const [hole] = ROUTING.holes;
  const figures = ANALYSIS.holes.get('h1');
  const [tee] = figures?.tees ?? [];
  if (!hole || !figures || !tee) throw new Error('the sample is incomplete');
  const middle = { ...tee, teeSet: 'middle', at: { x: 0, y: 40 }, measuredLength: 325.76, proposed: true };
  const plan = {
    ...PLAN,
    teeSets: [
      ...PLAN.teeSets,
      { id: 'middle', name: 'Middle', player: 'bogey man' } as const,
      { id: 'forward', name: 'Forward', player: 'bogey woman' } as const,
    ],
  };
  const rows = toTeeRows(hole, { ...figures, tees: [tee, middle] }, plan);
  expect(rows.map(({ name, state, length }) => [name, state, length])).toEqual([
    ['Back', 'placed', 365.76],
    ['Middle', 'proposed', 325.76],
    ['Forward', 'missing', undefined],
  ]);
  expect(rows.map(({ end }) => end?.end)).toEqual(['tee:back', undefined, undefined]);
});
