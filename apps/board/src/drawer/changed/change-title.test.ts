import type { NamedEdit } from '@loopwright/document';
import { expect, test } from 'vitest';
import { EVERY_EDIT, LONG_PLAN, LONG_ROUTING } from '../../reading/every-edit.test-plan.ts';
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

const SPLIT = { edit: 'split loop', routing: 'a', loop: 'front', after: 'h1', as: { id: 'b', name: 'B' } } as const;

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
  // 10.9728 m is 12 yd.
  [{ ...H1, edit: 'lengthen', end: 'tee:back', by: 10.9728 }, 'Hole 1 lengthened 12 yd'],
  [{ ...H1, edit: 'lengthen', end: 'green', by: -10.9728 }, 'Hole 1 shortened 12 yd'],
  [{ ...H1, edit: 'exchange corridors', with: 'h2' }, '1 and 2 exchanged corridors'],
  [{ ...H1, edit: 'name hole', name: 'Quarry' }, 'Hole 1 named ‘Quarry’'],
  [{ edit: 'move holes', routing: 'a', holes: ['h1', 'h2'], by: { x: 9.144, y: 0 } }, '2 holes moved 10 yd east'],
  [SPLIT, 'Loop Front nine split after hole 1'],
  [{ edit: 'put back what was tried', steps: 3 }, 'What was tried is put back: 3 steps'],
];

test.each(TITLES)('%o reads %s', (edit, title) => {
  expect(titleOf(edit)).toBe(title);
});

test('several edits are counted', () => {
  expect(titleOf({ ...H1, edit: 'reverse hole' }, { ...H1, edit: 'take out' })).toBe(
    'Hole 1 now plays the other way, and 1 more change',
  );
});

test.each(EVERY_EDIT)('$edit has a title of one line, however long the names', (edit) => {
  const change = { state: 'done', edits: [edit], before: ANALYSIS, after: ANALYSIS, beforePlan: LONG_PLAN } as const;
  const at = { plan: LONG_PLAN, routing: LONG_ROUTING, analysis: ANALYSIS };
  const title = changeTitle({ ...change, ripple: { figures: [], findings: [] } }, at, 'metres');
  expect([...title].length).toBeLessThanOrEqual(120);
  expect(title).toMatch(/^\S.*\S$/u);
  expect(title).not.toMatch(/undefined|NaN|object/);
});
