import { expect, test } from 'vitest';
import { ROUTING } from '../../reading/two-holes.test-plan.ts';
import { holesWords, nextRoutingName } from './routing-words.ts';

test.each([
  [['A'], 'B'],
  [['A', 'c', ' B '], 'D'],
  [['Existing'], 'A'],
])('after routings %j the next is called %s', (names, next) => {
  expect(nextRoutingName(names.map((name) => ({ name })))).toBe(next);
});

test('holes in play and spare ones are counted apart', () => {
  expect(holesWords(ROUTING)).toBe('2 holes, 1 spare');
  expect(holesWords({ loops: [{ id: 'l', name: 'A', holes: ['h'] }], spare: [] })).toBe('1 hole');
});
