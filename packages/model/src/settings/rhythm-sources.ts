/** What the limits of sequence and of the round have in common where 31 mapped courses gave them. */
export const COURSE = { group: 'rhythm', least: 0, status: 'calibrated' } as const;

/** The same where a rule of the trade did. */
export const PRACTICE = {
  group: 'rhythm',
  least: 0,
  status: 'common practice',
  source: 'common practice, no source',
} as const;
