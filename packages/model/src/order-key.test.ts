import { expect, test } from 'vitest';
import { isOrderKey, orderKeyAt } from './order-key.ts';

test('fresh keys sort in the order they were made, and each is a place in an order', () => {
  const keys = Array.from({ length: 3906 }, (_, index) => orderKeyAt(index));
  expect([...keys].sort((a, b) => (a < b ? -1 : 1))).toEqual(keys);
  expect(keys.every(isOrderKey)).toBe(true);
  expect(keys.slice(0, 3)).toEqual(['a0', 'a1', 'a2']);
  expect(() => orderKeyAt(3906)).toThrow(RangeError);
  expect(() => orderKeyAt(-1)).toThrow(RangeError);
});

// Keys from the tables in the test of the package fractional-indexing 4.
test.each(['a0', 'a1', 'a0V', 'Zz', 'b99', 'zzzzzzzzzzzzzzzzzzzzzzzzzzz', 'A00000000000000000000000001'])(
  '%s is a place',
  (key) => expect(isOrderKey(key)).toBe(true),
);
test.each([
  '',
  'a',
  '0',
  '00',
  'a00',
  'b0',
  'A00000000000000000000000000',
  'a0 ',
  'a-',
  7,
  null,
  ['a0'],
  'a'.repeat(200),
])('%s is no place', (key) => expect(isOrderKey(key)).toBe(false));
