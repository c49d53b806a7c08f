import { expect, test } from 'vitest';
import { isId, makeId } from './ids.ts';
import { seededRandom } from './random.ts';

test.each(['a', 'h4k2m9x1q', 'long-saltings', '7', `a${'0'.repeat(39)}`])('%s can be an id', (value) => {
  expect(isId(value)).toBe(true);
});

test.each(['', '-a', 'A', 'a/b', 'a b', 'ä', `a${'0'.repeat(40)}`, '__proto__', 'a\n', 7, null, undefined, {}, ['a']])(
  '%j cannot be an id',
  (value) => {
    expect(isId(value)).toBe(false);
  },
);

test('a made id is an id that says what it names', () => {
  const random = seededRandom(4);
  for (let i = 0; i < 1000; i++) {
    const id = makeId('h', random);
    expect(isId(id)).toBe(true);
    expect(id.startsWith('h')).toBe(true);
  }
});

test('ten thousand made ids are all different', () => {
  const random = seededRandom(5);
  expect(new Set(Array.from({ length: 10_000 }, () => makeId('h', random))).size).toBe(10_000);
});

test('the ends of chance still make an id', () => {
  expect(isId(makeId('h', () => 0))).toBe(true);
  expect(isId(makeId('h', () => 1 - Number.EPSILON / 2))).toBe(true);
});
