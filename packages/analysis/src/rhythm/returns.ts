import { distanceBetween } from '@loopwright/geometry';
import { toMillimetre } from '@loopwright/model';
import type { Finding } from '../figures.ts';
import type { FindingCode } from '../findings/catalogue.ts';
import { onlyTier, roundFinding } from '../findings/round-finding.ts';
import { type Tier, tierOver, tiersOf } from '../findings/tier.ts';
import type { RoundContext } from '../round-context.ts';
import { loopsPlayed } from './loops-apart.ts';
import type { RoundHole } from './round-holes.ts';
import type { RoundRhythm } from './round-rhythm.ts';

/**
 * Where a round, and each loop of it before the last, ends: straight from that green to the round's first tee.
 *
 * Source: calibrated on 31 mapped courses; loops returning to a central clubhouse: C. Johnston, Routing considerations.
 */
export function checkReturns(rhythm: RoundRhythm, context: RoundContext): readonly Finding[] {
  const { holes, settings, round } = rhythm;
  const first = holes[0];
  if (!first) return [];
  const ends = loopsPlayed(round.round, context).map(({ holes: ids }) => ids[ids.length - 1]);
  return ends.flatMap((end, i) => {
    const hole = holes.find(({ id }) => id === end);
    if (!hole || hole === first) return [];
    if (i === ends.length - 1) return returnFinding('last-to-first', hole, first, tiersOf('last-to-first', settings));
    return returnFinding('loop-to-first', hole, first, [onlyTier('loop-to-first-mention', settings)]);
  });
}

function returnFinding(
  code: FindingCode,
  last: RoundHole,
  first: RoundHole,
  tiers: readonly Tier[],
): readonly Finding[] {
  const measured = toMillimetre(distanceBetween(last.greenCentre, first.tee.at));
  const tier = tierOver(tiers, measured);
  if (!tier) return [];
  const place = { type: 'line', points: [last.greenCentre, first.tee.at] } as const;
  return [roundFinding({ code, holes: [last.id, first.id], measured, tier, unit: 'm', worse: 'more', place })];
}
