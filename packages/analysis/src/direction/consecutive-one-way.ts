import type { Finding } from '../figures.ts';
import { roundFinding } from '../findings/round-finding.ts';
import { tierOver, tiersOf } from '../findings/tier.ts';
import { followingPairs, idsOf } from '../rhythm/round-holes.ts';
import type { RoundDirections } from './round-directions.ts';

/** How often a hole runs the same way as the one before it. Source: calibrated on 31 mapped courses. */
export function checkConsecutiveOneWay({
  holes,
  settings,
  isOneWay,
  round,
  name,
}: RoundDirections): readonly Finding[] {
  const pairs = followingPairs(holes).filter(([a, b]) => isOneWay(a, b, 'next-one-way-angle'));
  const tier = tierOver(tiersOf('next-one-way', settings), pairs.length);
  if (!tier) return [];
  return [
    roundFinding({
      code: 'next-one-way',
      holes: [...new Set(pairs.flatMap(idsOf))],
      about: round.round,
      measured: pairs.length,
      tier,
      unit: 'pairs',
      worse: 'more',
      detail: { round: name, angle: settings['next-one-way-angle'] },
    }),
  ];
}
