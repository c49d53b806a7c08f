import { expect, test } from 'vitest';
import { parseTypedLeg } from './typed-leg.ts';

test('a length, a length with its bearing, and a place are told apart', () => {
  expect(parseTypedLeg(' 380 ')).toEqual({ kind: 'leg', length: 380 });
  expect(parseTypedLeg('120 @ 90')).toEqual({ kind: 'leg', length: 120, bearing: Math.PI / 2 });
  expect(parseTypedLeg('120, -4.5')).toEqual({ kind: 'place', at: { x: 120, y: -4.5 } });
});

test.each(['', 'x', '0', '-5', '1e9', '1e400', '12 @ 400', '5, 9e9', '9999999999, 1', '3 4', '120 @'])(
  '%j is none',
  (typed) => {
    expect(parseTypedLeg(typed)).toBeUndefined();
  },
);
