import type { Finding } from '../figures.ts';
import { onlyTier, roundFinding } from '../findings/round-finding.ts';
import type { Tier } from '../findings/tier.ts';
import type { RoundHole } from './round-holes.ts';
import type { RoundRhythm } from './round-rhythm.ts';

/**
 * Where the first and the last par 3 of a round come: too early, late, or as the last hole.
 *
 * Source: the first par 3 is usually the 4th hole on 31 mapped courses; 5 % of 144 cards start with one, 8 % finish so.
 */
export function checkParThreePlaces(rhythm: RoundRhythm): readonly Finding[] {
  const threes = rhythm.holes.filter(({ par }) => par === 3);
  const first = threes[0];
  const last = threes[threes.length - 1];
  if (!first || !last || threes.length === rhythm.holes.length) return [];
  return [...firstFinding(first, rhythm), ...lastFinding(last, rhythm)];
}

function firstFinding(first: RoundHole, { settings, name }: RoundRhythm): readonly Finding[] {
  const detail = { round: name };
  const noticed = { holes: [first.id], measured: first.number, unit: 'holes', detail } as const;
  const early = onlyTier('par-three-early-mention', settings);
  if (first.number <= early.limit) {
    return [roundFinding({ code: 'par-three-early', ...noticed, tier: early, worse: 'less' })];
  }
  const tier = lateTier(first.number, settings);
  return tier ? [roundFinding({ code: 'par-three-late', ...noticed, tier, worse: 'more' })] : [];
}

function lateTier(number: number, settings: RoundRhythm['settings']): Tier | undefined {
  const look = onlyTier('par-three-late-look', settings, 'look');
  if (number > look.limit) return look;
  const mention = onlyTier('par-three-late-mention', settings);
  return number >= mention.limit ? mention : undefined;
}

function lastFinding(last: RoundHole, { round, settings, name }: RoundRhythm): readonly Finding[] {
  const fromEnd = round.holes.length - last.number + 1;
  const tier = onlyTier('par-three-last-mention', settings);
  if (fromEnd > tier.limit) return [];
  const noticed = { code: 'par-three-last', holes: [last.id], measured: fromEnd, tier } as const;
  return [roundFinding({ ...noticed, unit: 'holes', worse: 'less', detail: { round: name } })];
}
