import { openPlan } from '@loopwright/document';
import { expect, test } from 'vitest';
import { PLAN } from '../../reading/two-holes.test-plan.ts';
import { startRoutingEdit } from './start-routing.ts';

function ids() {
  let count = 0;
  return (letter: string) => `${letter}new${count++}`;
}

test('twenty-seven holes are three loops and the three rounds of two', () => {
  const board = openPlan();
  board.edit({ edit: 'lay out plan', plan: PLAN });
  board.edit(startRoutingEdit({ routing: 'b', name: 'B', holes: 27, freshId: ids() }));
  const started = board.read().routings.find(({ id }) => id === 'b');
  expect(started?.loops.map(({ name }) => name)).toEqual(['A', 'B', 'C']);
  expect(started?.rounds.map(({ name }) => name)).toEqual(['A + B', 'B + C', 'C + A']);
  expect(started?.rounds.map(({ loops }) => loops.length)).toEqual([2, 2, 2]);
});
