import { expect, test } from 'vitest';
import { parseTyped } from './typed-values.ts';

// A yard is 0.9144 m by definition (1959 agreement).
test('a length is in the unit the reader reads, unless it says another', () => {
  expect(parseTyped('380', 'metres')).toEqual({ kind: 'length', of: 'leg', metres: 380 });
  expect(parseTyped('100', 'yards')).toEqual({ kind: 'length', of: 'leg', metres: 91.44 });
  expect(parseTyped('100 m', 'yards')).toEqual({ kind: 'length', of: 'leg', metres: 100 });
  expect(parseTyped('100yd', 'metres')).toEqual({ kind: 'length', of: 'leg', metres: 91.44 });
});

test('an equals sign speaks of the whole hole', () => {
  expect(parseTyped(' =380 ', 'metres')).toEqual({ kind: 'length', of: 'whole', metres: 380 });
});

test('a bearing is written after an at sign, in degrees from north', () => {
  expect(parseTyped('380 @ 045', 'metres')).toEqual({ kind: 'length', of: 'leg', metres: 380, bearing: Math.PI / 4 });
  expect(parseTyped('380 at 90°', 'metres')).toEqual({ kind: 'length', of: 'leg', metres: 380, bearing: Math.PI / 2 });
  expect(parseTyped('380 @ 361', 'metres').kind).toBe('wrong');
});

test('two figures with a comma are a place east and north', () => {
  expect(parseTyped('1234.5, -678.9', 'yards')).toEqual({ kind: 'place', at: { x: 1234.5, y: -678.9 } });
  expect(parseTyped('(-5, 7', 'metres')).toEqual({ kind: 'place', at: { x: -5, y: 7 } });
  expect(parseTyped('9999999, 1', 'metres').kind).toBe('wrong');
});

test.each(['', '0', 'abc', '=', '380 @', '1,2,3', '-5', '1e9', '9'.repeat(10_000)])('%s is no value', (text) => {
  expect(parseTyped(text, 'metres').kind).toBe('wrong');
});
