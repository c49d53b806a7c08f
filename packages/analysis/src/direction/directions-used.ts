import type { Finding } from '../figures.ts';
import { onlyTier, roundFinding } from '../findings/round-finding.ts';
import type { RoundDirections } from './round-directions.ts';

/**
 * How many of the rose's eight directions a round uses, by the straight bearing from tee to green.
 *
 * Source: settings `directions-used-…`, calibrated on 18 holes; shorter rounds are not judged.
 */
export function checkDirectionsUsed({ round, name, settings }: RoundDirections): readonly Finding[] {
  const used = round.rose.filter(({ holes }) => holes > 0).length;
  if (round.holes.length < settings['directions-used-holes'] || used === 0) return [];
  const look = onlyTier('directions-used-look', settings, 'look');
  const mention = onlyTier('directions-used-mention', settings);
  const tier = [look, mention].find(({ limit }) => used <= limit);
  if (!tier) return [];
  return [
    roundFinding({
      code: 'directions-used',
      holes: [],
      about: round.round,
      measured: used,
      tier,
      unit: 'sectors',
      worse: 'less',
      detail: { round: name },
    }),
  ];
}
