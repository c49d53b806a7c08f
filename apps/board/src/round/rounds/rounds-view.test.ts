import { openPlan } from '@loopwright/document';
import { expect, test } from 'vitest';
import { PLAN, ROUTING } from '../../reading/two-holes.test-plan.ts';
import { changeLoopsEdit, toRoundRows, twoByTwoEdit } from './rounds-view.ts';

const three = {
  ...ROUTING,
  loops: ['A', 'B', 'C'].map((name) => ({ id: name.toLowerCase(), name, holes: [] })),
  rounds: [{ id: 'day', name: 'A + B', loops: ['a', 'b'] }],
};

function ids() {
  let count = 0;
  return (letter: string) => `${letter}new${count++}`;
}

test('three loops are played two by two; a round that is there is not made again', () => {
  const edit = twoByTwoEdit(three, ids());
  expect(edit).toMatchObject({
    edit: 'several',
    edits: [{ round: { name: 'B + C', loops: ['b', 'c'] } }, { round: { name: 'C + A', loops: ['c', 'a'] } }],
  });
  expect(twoByTwoEdit(ROUTING, ids())).toBeUndefined();
});

test('all of them are one step on the plan', () => {
  const board = openPlan();
  board.edit({ edit: 'lay out plan', plan: { ...PLAN, routings: [{ ...three, holes: [], spare: [] }] } });
  const edit = twoByTwoEdit(board.read().routings[0] ?? three, ids());
  expect(edit && board.edit(edit)).toBe('done');
  expect(board.read().routings[0]?.rounds.map(({ name }) => name)).toEqual(['A + B', 'B + C', 'C + A']);
});

test('a round named by its loops is named anew with them; a name of its own stays', () => {
  const [round] = three.rounds;
  if (!round) throw new Error('the sample has no round');
  expect(changeLoopsEdit(three, round, ['c', 'b'])).toMatchObject({ to: { loops: ['c', 'b'], name: 'C + B' } });
  expect(changeLoopsEdit(three, { ...round, name: 'Medal' }, ['c'])).toMatchObject({ to: { loops: ['c'] } });
  expect(changeLoopsEdit(three, { ...round, name: 'Medal' }, ['c'])).not.toHaveProperty('to.name');
});

test('a round tells its loops and how many holes it has', () => {
  expect(toRoundRows(ROUTING)[0]).toMatchObject({ name: 'Round', holes: '2 holes', places: [{ name: 'Front nine' }] });
});
