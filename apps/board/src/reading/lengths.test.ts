import { expect, test } from 'vitest';
import {
  cardTotal,
  fromField,
  grouped,
  lengthChange,
  lengthFigure,
  lengthWords,
  signedFigure,
  toField,
} from './lengths.ts';

// The yard is 0.9144 m by definition (international agreement of 1959); sums by hand.
test('345.6 m reads 378 yd and 346 m', () => {
  expect(lengthWords(345.6432, 'yards')).toBe('378 yd');
  expect(lengthWords(345.6432, 'metres')).toBe('346 m');
});

test('thousands stand apart', () => {
  expect(grouped(6382)).toBe('6,382');
  expect(grouped(1234567)).toBe('1,234,567');
  expect(grouped(-1200)).toBe('−1,200');
  expect(grouped(999)).toBe('999');
  expect(grouped(-0.2)).toBe('0');
  expect(lengthFigure(2000, 'metres')).toBe('2,000');
});

test('a card total sums the printed figures, not the metres', () => {
  // Three holes of 100.4 m print 100 each: 300, where the sum of metres rounds to 301.
  expect(cardTotal([100.4, 100.4, 100.4], 'metres')).toBe(300);
});

test('a change is the difference of the figures shown', () => {
  // 100.4 m is shown as 100, 100.6 m as 101.
  expect(lengthChange(100.4, 100.6, 'metres')).toBe('+1');
  expect(lengthChange(100.5, 101.4, 'metres')).toBe('');
  expect(signedFigure(72, 71)).toBe('−1');
});

test('a field shows a tenth of the unit and gives back millimetres', () => {
  expect(toField(45.72, 'yards')).toBe(50);
  expect(fromField(50, 'yards')).toBe(45.72);
  expect(fromField(12.3456, 'metres')).toBe(12.346);
});
