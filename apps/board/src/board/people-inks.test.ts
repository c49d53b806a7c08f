import { expect, test } from 'vitest';
import { initialsOf, inkOf, PEOPLE_INKS } from './people-inks.ts';

/** Relative luminance and contrast as WCAG 2.2 defines them. */
function luminance(hex: string): number {
  const [r, g, b] = [1, 3, 5].map((at) => {
    const share = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * (r ?? 0) + 0.7152 * (g ?? 0) + 0.0722 * (b ?? 0);
}
const contrast = (a: string, b: string) => {
  const [light, dark] = [luminance(a), luminance(b)].sort((x, y) => y - x);
  return ((light ?? 0) + 0.05) / ((dark ?? 0) + 0.05);
};

test.each(PEOPLE_INKS)('$name ink is readable on paper and under white letters', ({ colour }) => {
  expect(contrast(colour, '#F4EEDF')).toBeGreaterThanOrEqual(4.5);
  expect(contrast(colour, '#FFFFFF')).toBeGreaterThanOrEqual(4.5);
});

test('an ink index from a newer server still gives an ink', () => {
  expect(inkOf(11)).toBe(PEOPLE_INKS[3]);
  expect(inkOf(Number.NaN)).toBe(PEOPLE_INKS[0]);
});

test.each([
  ['Jo Oram', 'JO'],
  ['jo', 'JO'],
  ['Ann Mary Rees', 'AR'],
  ['', '?'],
])('%s is shortened to %s', (name, initials) => {
  expect(initialsOf(name)).toBe(initials);
});
