import type { FigureChange } from '@loopwright/analysis';
import { expect, test } from 'vitest';
import { namesOf } from '../../reading/names.ts';
import { ANALYSIS, PLAN, ROUTING } from '../../reading/two-holes.test-plan.ts';
import { toFigureRows } from './figures-view.ts';

const rowsOf = (figures: readonly FigureChange[]) =>
  toFigureRows(
    {
      state: 'done',
      edits: [],
      before: ANALYSIS,
      after: ANALYSIS,
      beforePlan: PLAN,
      ripple: { figures, findings: [] },
    },
    namesOf(PLAN, ROUTING, 'yards'),
    { units: 'yards', teeSet: 'back' },
  );

test("a longer walk is told in the reader's unit and is worse", () => {
  const walk = { kind: 'walk', key: 'h1>h2', from: 'h1', to: 'h2' } as const;
  // 45.72 m is 50 yd, 91.44 m is 100 yd.
  expect(rowsOf([{ of: walk, figure: 'walk', before: 45.72, after: 91.44, better: false }])).toEqual([
    { key: 'Walk 1 → 2 walk', what: 'Walk 1 → 2', before: '50', after: '100', change: '+50', sense: 'worse' },
  ]);
});

test('a bearing turns the short way round', () => {
  const of = { kind: 'hole', hole: 'h1' } as const;
  const [row] = rowsOf([{ of, figure: 'bearing', before: (350 * Math.PI) / 180, after: (10 * Math.PI) / 180 }]);
  expect(row).toMatchObject({ what: 'Hole 1, plays', before: '350°', after: '010°', change: '20°', sense: 'neither' });
});

test('loops and rounds are left to the totals', () => {
  expect(rowsOf([{ of: { kind: 'loop', loop: 'front' }, figure: 'length', before: 1, after: 2 }])).toEqual([]);
});
