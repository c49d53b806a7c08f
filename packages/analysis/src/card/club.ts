/**
 * Each club's distance as a share of the driver's.
 *
 * Source: The Modern Guide to Golf Club Fitting, chapter on tees, as quoted in a public repository.
 */
export const CLUB_SHARES: readonly { readonly club: string; readonly share: number }[] = [
  { club: 'driver', share: 1 },
  { club: '3 wood', share: 0.93 },
  { club: '5 wood', share: 0.88 },
  { club: '3 hybrid', share: 0.82 },
  { club: '4 iron', share: 0.77 },
  { club: '5 iron', share: 0.73 },
  { club: '6 iron', share: 0.69 },
  { club: '7 iron', share: 0.64 },
  { club: '8 iron', share: 0.59 },
  { club: '9 iron', share: 0.54 },
  { club: 'pitching wedge', share: 0.49 },
  { club: 'gap wedge', share: 0.44 },
  { club: 'sand wedge', share: 0.39 },
];

/** Under this share of the driver no full club fits: common practice, no source. */
const SHORTEST_FULL_SHARE = 0.34;

/** The club whose full distance is nearest; the longer of two equally near. Both distances in the same unit. */
export function clubFor(distance: number, drive: number): string {
  if (distance < SHORTEST_FULL_SHARE * drive) return 'part shot';
  let best = { club: 'driver', off: Number.POSITIVE_INFINITY };
  for (const { club, share } of CLUB_SHARES) {
    const off = Math.abs(share * drive - distance);
    if (off < best.off) best = { club, off };
  }
  return best.club;
}
