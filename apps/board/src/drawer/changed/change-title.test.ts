import type { NamedEdit } from '@loopwright/document';
import { expect, test } from 'vitest';
import { ANALYSIS, PLAN, ROUTING } from '../../reading/two-holes.test-plan.ts';
import { changeTitle } from './change-title.ts';

const AT = { plan: PLAN, routing: ROUTING, analysis: ANALYSIS };
const titleOf = (...edits: NamedEdit[]) =>
  changeTitle(
    {
      state: 'done',
      edits,
      before: ANALYSIS,
      after: ANALYSIS,
      beforePlan: PLAN,
      ripple: { figures: [], findings: [] },
    },
    AT,
    'yards',
  );
const H1 = { routing: 'a', hole: 'h1' } as const;

const TITLES: readonly [NamedEdit, string][] = [
  // 3-4-5: 27.432 m east and 36.576 m north is 45.72 m, 50 yd.
  [{ ...H1, edit: 'move part', part: 'green', to: { x: 27.432, y: 402.336 } }, 'Green 1 moved 50 yd north-east'],
  [{ ...H1, edit: 'move part', part: 'tee:back', to: { x: -9.144, y: 0 } }, 'Back tee 1 moved 10 yd west'],
  [{ ...H1, edit: 'move part', part: 'tee:forward', to: { x: 0, y: 0 } }, 'Tee 1 placed'],
  [{ ...H1, edit: 'move hole', by: { x: 0, y: -18.288 } }, 'Hole 1 moved 20 yd south'],
  [{ ...H1, edit: 'reverse hole' }, 'Hole 1 now plays the other way'],
  [{ ...H1, edit: 'swap places', with: 'h2' }, 'Holes 1 and 2 swapped places'],
  [{ ...H1, edit: 'take out' }, 'Hole 1 taken out of the round'],
  [{ ...H1, edit: 'pin', part: 'green' }, 'Green 1 pinned'],
];

test.each(TITLES)('%o reads %s', (edit, title) => {
  expect(titleOf(edit)).toBe(title);
});

test('several edits are counted', () => {
  expect(titleOf({ ...H1, edit: 'reverse hole' }, { ...H1, edit: 'take out' })).toBe(
    'Hole 1 now plays the other way, and 1 more change',
  );
});
