import { expect, test } from 'vitest';
import { FIRST_WISHES, filesWords, HOLES_CHOICES, holesOf, planFor } from './new-board.ts';

test('a new board has the name, the units and the loops that were asked for', () => {
  const plan = planFor({ name: ' Hollow Moor ', units: 'metres', holes: 27, files: [] }, Math.random);
  expect([plan.site.name, plan.site.units]).toEqual(['Hollow Moor', 'metres']);
  expect(plan.routings[0]?.loops.map(({ name }) => name)).toEqual(['A', 'B', 'C']);
  expect(planFor(FIRST_WISHES, Math.random).site.name).toBe('Unnamed site');
});

test('every choice of holes leads back to its own', () => {
  expect(HOLES_CHOICES.map(({ key }) => holesOf(key))).toEqual([9, 18, 27, 'loop of six']);
  expect(holesOf('nonsense')).toBe(18);
});

test('pictures that go along are named', () => {
  expect(filesWords([new File([], 'aerial.jpg'), new File([], 'aerial.jgw')])).toContain('aerial.jpg, aerial.jgw');
});
