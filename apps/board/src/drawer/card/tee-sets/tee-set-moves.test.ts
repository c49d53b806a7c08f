import { openPlan } from '@loopwright/document';
import { expect, test } from 'vitest';
import { PLAN } from '../../../reading/two-holes.test-plan.ts';
import { addTeeSetEdit, canAddTeeSet, moveTeeSetEdit, placedTees } from './tee-set-moves.ts';

const SETS = ['back', 'middle', 'forward'].map((id) => ({ id, name: id, player: 'bogey man' as const }));

function boardWith(teeSets = SETS) {
  const board = openPlan();
  board.edit({ edit: 'lay out plan', plan: { ...PLAN, teeSets } });
  return board;
}

test('a set moves one place at a time, and not beyond the ends', () => {
  const board = boardWith();
  const back = moveTeeSetEdit(SETS, 'forward', -1);
  if (back) board.edit(back);
  expect(board.read().teeSets.map(({ id }) => id)).toEqual(['back', 'forward', 'middle']);
  const first = moveTeeSetEdit(board.read().teeSets, 'forward', -1);
  if (first) board.edit(first);
  expect(board.read().teeSets.map(({ id }) => id)).toEqual(['forward', 'back', 'middle']);
  expect(moveTeeSetEdit(SETS, 'back', -1)).toBeUndefined();
  expect(moveTeeSetEdit(SETS, 'forward', 1)).toBeUndefined();
});

test('a new set comes in front, by a free name; six are enough on a board', () => {
  const board = boardWith();
  for (let count = 0; count < 5; count += 1) {
    const edit = addTeeSetEdit(board.read().teeSets, `t${count}`);
    if (edit) board.edit(edit);
  }
  expect(
    board
      .read()
      .teeSets.map(({ name }) => name)
      .slice(3),
  ).toEqual(['Forward', 'Front', 'Short']);
  expect(canAddTeeSet(board.read().teeSets)).toBe(false);
});

test('placed tees are counted over all routings', () => {
  expect(placedTees(PLAN.routings, 'back')).toBe(3);
  expect(placedTees(PLAN.routings, 'forward')).toBe(0);
});
