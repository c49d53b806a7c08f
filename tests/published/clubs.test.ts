// Truth: The Modern Guide to Golf Club Fitting, chapter on tees (read as quoted in a public repository): each club
// as a share of the driver. Worked example: driver 215 yd; 380 yd hole leaves 165, nearest the 4 iron's 165.55.
import { CLUB_SHARES, clubFor } from '@loopwright/analysis';
import { expect, test } from 'vitest';

const PUBLISHED = [
  { club: '3 wood', yards: 199.95 },
  { club: '5 iron', yards: 156.95 },
  { club: '7 iron', yards: 137.6 },
  { club: 'pitching wedge', yards: 105.35 },
];

test.each(PUBLISHED)('with a driver of 215 yd the $club goes $yards yd', ({ club, yards }) => {
  const share = CLUB_SHARES.find((other) => other.club === club)?.share ?? 0;
  expect(Math.abs(share * 215 - yards)).toBeLessThan(1e-9);
  expect(clubFor(yards, 215)).toBe(club);
});

test('165 yd left after a drive of 215 is a 4 iron', () => {
  expect(clubFor(165, 215)).toBe('4 iron');
});
