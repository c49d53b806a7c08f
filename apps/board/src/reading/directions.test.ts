import { expect, test } from 'vitest';
import { angleWords, bearingWords, compassLetters, compassWord, headingOf } from './directions.ts';

test.each([
  [{ x: 0, y: 1 }, 'north', 'N', '000°'],
  [{ x: 1, y: 1 }, 'north-east', 'NE', '045°'],
  [{ x: 1, y: 0 }, 'east', 'E', '090°'],
  [{ x: -1, y: -1 }, 'south-west', 'SW', '225°'],
  [{ x: -0.001, y: 1 }, 'north', 'N', '000°'],
  [{ x: -1, y: 1 }, 'north-west', 'NW', '315°'],
])('a move by %o goes %s', (by, word, letters, bearing) => {
  expect(compassWord(headingOf(by))).toBe(word);
  expect(compassLetters(headingOf(by))).toBe(letters);
  expect(bearingWords(headingOf(by))).toBe(bearing);
});

test('a quarter turn is 90 degrees', () => {
  expect(angleWords(Math.PI / 2)).toBe('90°');
});
