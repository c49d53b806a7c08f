import { openPlan } from '@loopwright/document';
import { expect, test } from 'vitest';
import { startRoutingEdit } from './start-routing.ts';

test('a board without anything gets two nines, one round of both, and tee sets', () => {
  const board = openPlan();
  expect(board.edit(startRoutingEdit(board.read()))).toBe('done');
  const { routings, teeSets } = board.read();
  expect(routings[0]?.loops.map(({ name }) => name)).toEqual(['Out', 'In']);
  expect(routings[0]?.rounds).toHaveLength(1);
  expect(teeSets.length).toBeGreaterThan(0);
});

test('a board whose tee sets are there keeps them', () => {
  const board = openPlan();
  board.edit({
    edit: 'add tee set',
    teeSet: { id: 'gold', name: 'Gold', player: 'scratch man' },
    after: 'first',
  });
  expect(board.edit(startRoutingEdit(board.read()))).toBe('done');
  expect(board.read().teeSets.map(({ id }) => id)).toEqual(['gold']);
  expect(board.read().routings).toHaveLength(1);
});
