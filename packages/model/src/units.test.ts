// Truth: international yard and pound agreement of 1959: a yard is 0.9144 m, a foot 0.3048 m, exactly.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { cardLength, METRES_PER_FOOT, METRES_PER_YARD, metresFromYards, yardsFrom } from './units.ts';

test('a yard is three feet', () => {
  expect(METRES_PER_FOOT * 3).toBeCloseTo(METRES_PER_YARD, 15);
  expect(metresFromYards(1)).toBe(0.9144);
});

// Sums done by hand: 400 yd = 365.76 m; 100 m = 109.3613 yd.
test('400 yards and 100 metres', () => {
  expect(metresFromYards(400)).toBeCloseTo(365.76, 12);
  expect(Math.abs(yardsFrom(100) - 109.3613)).toBeLessThan(0.00005);
});

test('yards made from yards are the same yards', () => {
  fc.assert(
    fc.property(fc.double({ min: 0, max: 10_000, noNaN: true }), (yards) => {
      expect(yardsFrom(metresFromYards(yards))).toBeCloseTo(yards, 9);
    }),
  );
});

// The worked example of hole measurement: 430.278 yd along the line of play is 430 on the card.
test('a card prints whole yards or metres, halves up', () => {
  expect(cardLength(metresFromYards(430.278), 'yards')).toBe(430);
  expect(cardLength(365.5, 'metres')).toBe(366);
  expect(cardLength(365.49, 'metres')).toBe(365);
});

test('a total of a card is the sum of its printed holes, not the printed sum', () => {
  const holes = [100.4, 100.4, 100.4];
  expect(holes.reduce((sum, metres) => sum + cardLength(metres, 'metres'), 0)).toBe(300);
  expect(cardLength(301.2, 'metres')).toBe(301);
});
