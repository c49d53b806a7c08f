// Truth: Rules of Handicapping, Appendix F (R&A and USGA): par by length, read in the R&A/USGA text and in the Danish
// Golf Union's 2024 edition. Yards and metres are two published columns; neither is a conversion of the other.
import { likelyPar, PAR_TABLE_METRES, PAR_TABLE_YARDS, parsByLength } from '@loopwright/analysis';
import { describe, expect, test } from 'vitest';

const YARDS = [
  { sex: 'men', lengths: [1, 100, 239], pars: [3] },
  { sex: 'men', lengths: [240, 260], pars: [3, 4] },
  { sex: 'men', lengths: [261, 449], pars: [4] },
  { sex: 'men', lengths: [450, 470, 490], pars: [4, 5] },
  { sex: 'men', lengths: [491, 669], pars: [5] },
  { sex: 'men', lengths: [670, 710], pars: [5, 6] },
  { sex: 'men', lengths: [711, 1000], pars: [6] },
  { sex: 'women', lengths: [1, 199], pars: [3] },
  { sex: 'women', lengths: [200, 220], pars: [3, 4] },
  { sex: 'women', lengths: [221, 369], pars: [4] },
  { sex: 'women', lengths: [370, 400, 420], pars: [4, 5] },
  { sex: 'women', lengths: [421, 569], pars: [5] },
  { sex: 'women', lengths: [570, 600], pars: [5, 6] },
  { sex: 'women', lengths: [601], pars: [6] },
] as const;

const METRES = [
  { sex: 'men', lengths: [219], pars: [3] },
  { sex: 'men', lengths: [220, 240], pars: [3, 4] },
  { sex: 'men', lengths: [241, 409], pars: [4] },
  { sex: 'men', lengths: [410, 430, 450], pars: [4, 5] }, // 430 m: the Danish edition's example
  { sex: 'men', lengths: [451, 609], pars: [5] },
  { sex: 'men', lengths: [610, 650], pars: [5, 6] },
  { sex: 'men', lengths: [651], pars: [6] },
  { sex: 'women', lengths: [179], pars: [3] },
  { sex: 'women', lengths: [180, 200], pars: [3, 4] },
  { sex: 'women', lengths: [201, 339], pars: [4] },
  { sex: 'women', lengths: [340, 365, 380], pars: [4, 5] }, // 365 m: the Danish edition's example
  { sex: 'women', lengths: [381, 519], pars: [5] },
  { sex: 'women', lengths: [520, 550], pars: [5, 6] },
  { sex: 'women', lengths: [551], pars: [6] },
] as const;

describe('par by length', () => {
  test.each(YARDS)('in yards, $sex at $lengths may be par $pars', ({ sex, lengths, pars }) => {
    for (const length of lengths) expect(parsByLength(length, sex, PAR_TABLE_YARDS)).toEqual(pars);
  });

  test.each(METRES)('in metres, $sex at $lengths may be par $pars', ({ sex, lengths, pars }) => {
    for (const length of lengths) expect(parsByLength(length, sex, PAR_TABLE_METRES)).toEqual(pars);
  });

  test('the metre column is its own: 239 m is 261 yd, a par 4 in yards and still 3 or 4 in metres', () => {
    expect(parsByLength(239 / 0.9144, 'men', PAR_TABLE_YARDS)).toEqual([4]);
    expect(parsByLength(239, 'men', PAR_TABLE_METRES)).toEqual([3, 4]);
  });

  test('a hole is measured to the nearest whole yard or metre before the table is read', () => {
    expect(parsByLength(260.4, 'men', PAR_TABLE_YARDS)).toEqual([3, 4]);
    expect(parsByLength(260.5, 'men', PAR_TABLE_YARDS)).toEqual([4]);
    expect(parsByLength(219.5, 'men', PAR_TABLE_METRES)).toEqual([3, 4]);
  });

  test('where both pars are allowed, the one proposed is one of the two', () => {
    for (let length = 1; length <= 900; length++) {
      for (const sex of ['men', 'women'] as const) {
        expect(parsByLength(length, sex, PAR_TABLE_METRES)).toContain(likelyPar(length, sex, PAR_TABLE_METRES));
      }
    }
  });
});
