import type { Routing } from '@loopwright/model';
import { expect, test } from 'vitest';
import { holesWords } from './holes-words.ts';
import { namesOf } from './names.ts';
import { PLAN, ROUTING } from './two-holes.test-plan.ts';

const ids = Array.from({ length: 10 }, (_, index) => `n${index + 1}`);
const [model] = ROUTING.holes;
if (!model) throw new Error('the sample has no hole');
const routing: Routing = {
  ...ROUTING,
  holes: ids.map((id) => ({ ...model, id })),
  loops: [{ id: 'front', name: 'Front', holes: ids }],
  spare: [],
};
const words = (chosen: readonly string[]) => holesWords({ routing, names: namesOf(PLAN, routing, 'metres') }, chosen);

test('holes are named in playing order, whatever order they were picked in', () => {
  expect(words(['n7', 'n3', 'n4'])).toBe('holes 3, 4 and 7');
  expect(words(['n4'])).toBe('hole 4');
});

test('many are counted', () => {
  expect(words(ids.slice(0, 9))).toBe('9 holes');
  expect(words(ids)).toBe('all 10 holes');
});
