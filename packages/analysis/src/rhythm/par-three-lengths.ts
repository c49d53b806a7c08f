import type { Finding } from '../figures.ts';
import { onlyTier, roundFinding } from '../findings/round-finding.ts';
import { tiersOf, tierUnder } from '../findings/tier.ts';
import { idsOf } from './round-holes.ts';
import type { RoundRhythm } from './round-rhythm.ts';

/** Par 3s are compared from so many on. */
const ENOUGH = 3;

/**
 * The lengths of a round's par 3s: how far they are spread, and how much length they hide.
 *
 * A card's total says less about the other holes the further the par 3s are from the usual: five of 215 m make a
 * short course look long. Measured: what the par 3s add to the card beyond as many usual ones, or take from it.
 *
 * Source: spread calibrated on 31 mapped courses; usual length the middle one of 117 cards; the limit of the hidden
 * length common practice, no source.
 */
export function checkParThreeLengths({ holes, settings, round, name }: RoundRhythm): readonly Finding[] {
  const threes = holes.filter(({ par }) => par === 3);
  if (threes.length < ENOUGH || threes.length === holes.length) return [];
  const lengths = threes.map(({ tee }) => tee.measuredLength);
  const spread = Math.max(...lengths) - Math.min(...lengths);
  const tier = tierUnder(tiersOf('par-three-range', settings), spread);
  const hidden = lengths.reduce((sum, length) => sum + length - settings['par-three-usual'], 0);
  const hides = onlyTier('par-three-hidden-mention', settings);
  const about = { holes: idsOf(threes), about: round.round, unit: 'm', detail: { round: name } } as const;
  return [
    ...(tier ? [roundFinding({ code: 'par-three-range', ...about, measured: spread, tier, worse: 'less' })] : []),
    ...(Math.abs(hidden) > hides.limit
      ? [
          roundFinding({
            code: 'par-threes-hide-length',
            ...about,
            measured: Math.abs(hidden),
            tier: hides,
            worse: 'more',
            detail: { round: name, way: hidden > 0 ? 'longer' : 'shorter' },
          }),
        ]
      : []),
  ];
}
