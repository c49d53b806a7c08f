import { expect, test } from 'vitest';
import { figureWords } from './figure-words.ts';

const NAMES = { length: (metres: number) => `${metres} yd`, angle: (degrees: number) => `${degrees}°` };

test.each([
  [38, 'm', '38 yd'],
  [14, 'deg', '14°'],
  [0.755, 'share', '76 %'],
  [1, 'holes', '1 hole'],
  [4, 'holes', '4 holes'],
  [12.4, 'min', '12 min'],
] as const)('%d %s reads %s', (value, unit, words) => {
  expect(figureWords(value, unit, NAMES)).toBe(words);
});
