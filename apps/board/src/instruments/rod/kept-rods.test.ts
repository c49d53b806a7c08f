import { expect, test } from 'vitest';
import { MOST_RODS, parseRods, withRod } from './kept-rods.ts';

const rod = (name: string, ...legs: readonly number[]) => ({ name, legs });

test('rods come back as they were kept; what is no rod is left out or none', () => {
  const kept = [rod('Long four', 265, 140), rod('Five', 250, 220, 90)];
  expect(parseRods(JSON.stringify(kept))).toEqual(kept);
  for (const wrong of [
    undefined,
    '',
    '{',
    '7',
    '[{"name":"x"}]',
    '[{"name":"x","legs":[1e9]}]',
    '[{"name":"x","legs":[]}]',
  ])
    expect(parseRods(wrong)).toEqual([]);
});

test('a rod of the same name takes the place of the one before; without a name it is not kept', () => {
  const rods = [rod('a', 100), rod('b', 200)];
  expect(withRod(rods, rod(' a ', 150))).toEqual([rod('a', 150), rod('b', 200)]);
  expect(withRod(rods, rod('  ', 150))).toBe(rods);
});

test('the oldest goes when there are too many, and a long name is cut', () => {
  const full = Array.from({ length: MOST_RODS }, (_, index) => rod(`rod ${index}`, 100));
  const more = withRod(full, rod('n'.repeat(10_000), 100));
  expect(more).toHaveLength(MOST_RODS);
  expect(more[0]?.name).toBe('rod 1');
  expect(more.at(-1)?.name).toHaveLength(40);
});
