import { expect, test } from 'vitest';
import { isolated } from './isolated.ts';
import { namesOf } from './names.ts';
import { quoted, shortName } from './short-name.ts';
import { PLAN, ROUTING } from './two-holes.test-plan.ts';

const ARABIC = 'مزرعة';

test('a name written from right to left keeps to itself, and only once', () => {
  expect(isolated(ARABIC)).toBe(`\u2068${ARABIC}\u2069`);
  expect(isolated(isolated(ARABIC))).toBe(`\u2068${ARABIC}\u2069`);
  for (const name of ['Old mill', 'Ðæð', '古い池', 'नदी', '😀', '6', '']) expect(isolated(name)).toBe(name);
});

test('cut short it keeps its end', () => {
  const long = shortName(isolated(ARABIC.repeat(20)));
  expect(long).toMatch(/^\u2068.{31}…\u2069$/u);
  expect(shortName(long)).toBe(long);
  expect(quoted(ARABIC)).toBe(`‘\u2068${ARABIC}\u2069’`);
});

test('what is told of a plan has its names kept apart from the words', () => {
  const [loop] = ROUTING.loops;
  if (!loop) throw new Error('the routing has a loop');
  const routing = { ...ROUTING, loops: [{ ...loop, name: ARABIC }] };
  expect(namesOf(PLAN, routing, 'metres').loop(loop.id)).toBe(`\u2068${ARABIC}\u2069`);
});
