import { expect, test } from 'vitest';
import { type NewPlan, newPlan, STARTING_HOLES } from './new-plan.ts';
import { parsePlan } from './parse/plan.ts';

const start = (more: Partial<NewPlan> = {}) => {
  let count = 0;
  const freshId = (letter: string) => `${letter}${++count}`;
  return newPlan({ name: 'Made-up Moor', units: 'yards', holes: 18, freshId, ...more });
};
const rounds = (holes: NewPlan['holes']) => {
  const [routing] = start({ holes }).routings;
  const names = new Map(routing?.loops.map(({ id, name }) => [id, name]));
  return routing?.rounds.map(({ name, loops }) => ({ name, loops: loops.map((id) => names.get(id)) }));
};

test('eighteen holes are two nines played as one round', () => {
  expect(rounds(18)).toEqual([{ name: 'Round', loops: ['Out', 'In'] }]);
});

test('three nines make three rounds, each nine once first and once second', () => {
  expect(rounds(27)).toEqual([
    { name: 'A + B', loops: ['A', 'B'] },
    { name: 'B + C', loops: ['B', 'C'] },
    { name: 'C + A', loops: ['C', 'A'] },
  ]);
});

test('nine holes, and a loop of six, are one loop', () => {
  expect(rounds(9)).toEqual([{ name: 'Round', loops: ['Nine'] }]);
  expect(rounds('loop of six')).toEqual([{ name: 'Round', loops: ['Six'] }]);
});

test.each(STARTING_HOLES)('a new board for %s reads back as it is, without a hole', (holes) => {
  const plan = start({ holes });
  expect(parsePlan(JSON.parse(JSON.stringify(plan)))).toEqual({ kind: 'plan', plan, notes: [] });
  expect(plan.routings.flatMap((routing) => routing.holes)).toEqual([]);
  expect(plan.teeSets.map(({ player }) => player)).toEqual(['scratch man', 'bogey man', 'bogey woman']);
});

test('a name of nothing, or of ten thousand characters in any script, makes a board all the same', () => {
  expect(start({ name: ' \u0000 ' }).site.name).toBe('Unnamed site');
  for (const letter of ['x', 'é', 'ह', '球', '⛳', '😀']) {
    const { name } = start({ name: letter.repeat(10_000) }).site;
    expect(name).toBe(letter.repeat(80));
  }
});
