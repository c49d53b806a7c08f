import type { Finding } from '../figures.ts';
import { roundFinding } from '../findings/round-finding.ts';
import { tierReached, tiersOf } from '../findings/tier.ts';
import { followingPairs, idsOf, runsOf } from './round-holes.ts';
import type { RoundRhythm } from './round-rhythm.ts';

/**
 * Long runs of one par, and par 3s or par 5s that follow each other.
 *
 * Source: limits calibrated on 31 mapped courses; on 144 cards the longest run of par 4s is 3 on 46 %, 4 on 17 %,
 * 5 or more on 7 %. No two equal pars in a row is called the ideal (J. Brauer, golfcourseindustry.com).
 */
export function checkParRuns(rhythm: RoundRhythm): readonly Finding[] {
  return [
    ...checkRuns(rhythm),
    ...inARow(3, 'par-threes-in-a-row', rhythm),
    ...inARow(5, 'par-fives-in-a-row', rhythm),
  ];
}

function checkRuns({ holes, settings }: RoundRhythm): readonly Finding[] {
  const tiers = tiersOf('par-run', settings);
  const runs = runsOf(holes, (a, b) => a.par === b.par && b.number === a.number + 1);
  return runs.flatMap((run) => {
    const tier = tierReached(tiers, run.length);
    const par = run[0]?.par;
    if (!tier || par === undefined) return [];
    const noticed = { code: 'par-run', holes: idsOf(run), measured: run.length, tier, detail: { par } } as const;
    return [roundFinding({ ...noticed, unit: 'holes', worse: 'more' })];
  });
}

function inARow(
  par: 3 | 5,
  code: 'par-threes-in-a-row' | 'par-fives-in-a-row',
  { holes, settings, round, name }: RoundRhythm,
): readonly Finding[] {
  const pairs = followingPairs(holes).filter(([a, b]) => a.par === par && b.par === par);
  const tier = tierReached(tiersOf(code, settings), pairs.length);
  if (!tier) return [];
  return [
    roundFinding({
      code,
      holes: [...new Set(pairs.flatMap(idsOf))],
      about: round.round,
      measured: pairs.length,
      tier,
      unit: 'pairs',
      worse: 'more',
      detail: { round: name },
    }),
  ];
}
