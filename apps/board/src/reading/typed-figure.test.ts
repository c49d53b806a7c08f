import { expect, test } from 'vitest';
import { parseTypedBearing, parseTypedCoordinate, parseTypedLength } from './typed-figure.ts';

const readOf = (typed: ReturnType<typeof parseTypedLength>) => (typed.kind === 'figure' ? typed.value : typed.why);

// A yard is 0.9144 m by definition (1959 agreement).
test.each([
  ['380', 380],
  ['380 m', 380],
  [' 100 yd ', 91.44],
  ['1.234,5', 1234.5],
  ['1,234.5', 1234.5],
  ['1 234,5 m', 1234.5],
  ["12'345", 12345],
  ['1,234', 1234],
  ['12,5', 12.5],
  ['.5', 0.5],
  ['1.234.567,25', null],
  ['−12', -12],
  ['-12', -12],
])('%s is read as %s metres', (text, metres) => {
  const read = parseTypedLength(text, 'metres');
  if (metres === null) expect(read.kind).toBe('wrong');
  else expect(readOf(read)).toBeCloseTo(metres, 9);
});

test('without a unit a length is in the reader’s', () => {
  expect(readOf(parseTypedLength('100', 'yards'))).toBeCloseTo(91.44, 9);
  expect(readOf(parseTypedLength('100 m', 'yards'))).toBe(100);
});

test('a sign is told, so that a field can read it as more or less', () => {
  expect(parseTypedLength('+10', 'metres')).toEqual({ kind: 'figure', value: 10, signed: true });
  expect(parseTypedLength('10', 'metres')).toMatchObject({ signed: false });
});

test.each(['', 'abc', '12 miles', '1e9', '99999999', '٣٨٠', '3'.repeat(10_000)])(
  '%s is refused with a reason',
  (text) => {
    const read = parseTypedCoordinate(text);
    expect(read).toMatchObject({ kind: 'wrong', why: expect.stringMatching(/.{8,90}/) });
  },
);

test('a bearing is in degrees from north, a full turn being north again', () => {
  expect(readOf(parseTypedBearing('090°'))).toBeCloseTo(Math.PI / 2, 12);
  expect(readOf(parseTypedBearing('360'))).toBe(0);
  for (const wrong of ['361', '-5', '45 m']) expect(parseTypedBearing(wrong).kind).toBe('wrong');
});
