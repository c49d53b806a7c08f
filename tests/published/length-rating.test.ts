// Truth: rating from length. Scratch men: myscorecard.com "Slope & Rating II" (second hand); bogey men and both
// women's formulas from memory, agreeing with two public repositories. Slope factors: Golf Association of Michigan.
// Rows calculated from those formulas by hand, given to 4 and 3 decimals.
import { lengthForRating, lengthRating, slopeFrom } from '@loopwright/analysis';
import { METRES_PER_YARD } from '@loopwright/model';
import { describe, expect, test } from 'vitest';

const ROWS = [
  { sex: 'men', yards: 6000, scratch: 68.1727, bogey: 88.2, slope: 107.767 },
  { sex: 'men', yards: 6300, scratch: 69.5364, bogey: 90.075, slope: 110.518 },
  { sex: 'men', yards: 6500, scratch: 70.4455, bogey: 91.325, slope: 112.353 },
  { sex: 'men', yards: 7000, scratch: 72.7182, bogey: 94.45, slope: 116.939 },
  { sex: 'women', yards: 4800, scratch: 66.7667, bogey: 91.3, slope: 104.021 },
  { sex: 'women', yards: 5200, scratch: 68.9889, bogey: 94.6333, slope: 108.732 },
  { sex: 'women', yards: 5400, scratch: 70.1, bogey: 96.3, slope: 111.088 },
  { sex: 'women', yards: 5800, scratch: 72.3222, bogey: 99.6333, slope: 115.799 },
] as const;

describe('length rating', () => {
  test.each(ROWS)('$sex, $yards yd', ({ sex, yards, scratch, bogey, slope }) => {
    const rating = lengthRating(yards * METRES_PER_YARD, sex);
    if (!rating) throw new Error('a course of this length is rated');
    expect(Math.abs(rating.scratch - scratch)).toBeLessThan(1e-4);
    expect(Math.abs(rating.bogey - bogey)).toBeLessThan(1e-4);
    // Two ratings to 1e-4, times 5.381.
    expect(Math.abs(slopeFrom(rating, sex) - slope)).toBeLessThan(1.1e-3);
  });

  test('slope and rating turn back into the bogey rating: 72.1 and 134 make 97.002 for men', () => {
    expect(slopeFrom({ scratch: 72.1, bogey: 97.002 }, 'men')).toBeCloseTo(134, 2);
    expect(slopeFrom({ scratch: 72, bogey: 98.651 }, 'women')).toBeCloseTo(113, 2);
  });
});

// Truth: USGA Course Rating manual and guide 2012–2015, introduction slides (Golf.se): short courses.
describe('short courses', () => {
  test('3,300 yd count as 3,390.0 for women and 3,848.9 for men', () => {
    expect(lengthForRating(3300, 'women')).toBeCloseTo(3390, 6);
    expect(lengthForRating(3300, 'men')).toBeCloseTo(3848.9, 6);
  });

  test('the correction meets the plain length at 3,600 yd for women and 4,795.6 yd for men', () => {
    expect(lengthForRating(3600, 'women')).toBeCloseTo(3600, 6);
    expect(lengthForRating(3601, 'women')).toBe(3601);
    expect(lengthForRating(4795.6, 'men')).toBeCloseTo(4795.6, 1);
    expect(lengthForRating(4800, 'men')).toBe(4800);
  });

  test('a course too short to be rated has none', () => {
    expect(lengthRating(2500 * METRES_PER_YARD, 'men')).toBeUndefined();
  });
});
