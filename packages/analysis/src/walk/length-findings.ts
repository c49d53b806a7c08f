import type { HoleId, Round, Settings } from '@loopwright/model';
import { toMillimetre } from '@loopwright/model';
import type { Finding, HoleFigures, WalkFigures } from '../figures.ts';
import { type Tier, tierOver, tiersOf } from '../findings/tier.ts';
import { walkBetween } from './walk-between.ts';
import { walkFinding } from './walk-finding.ts';

/** Walks of a round that the limits for the whole round were measured on: 18 holes have 17. */
const CALIBRATED_WALKS = 17;

/**
 * A walk from a green to the next tee that is longer than walkers like. Between loops the wider limits hold.
 *
 * @param tiers  the limits of that measure
 * Source of the limits: 527 walks on 31 mapped courses.
 */
export function checkWalkLength(
  walk: WalkFigures,
  measure: 'long-walk' | 'long-walk-between-loops',
  tiers: readonly Tier[],
): readonly Finding[] {
  const tier = tierOver(tiers, walk.distance);
  if (!tier) return [];
  const place = { type: 'line', points: walk.path } as const;
  return [walkFinding(walk, { code: measure, ...tier, measured: walk.distance, place, safety: false })];
}

/**
 * The way from a loop's last green to the next loop's first tee. Where the round goes by a base between them, the
 * straight way is the one that counts: the limits were measured so.
 */
export function walkBetweenLoops(
  walks: ReadonlyMap<string, WalkFigures>,
  from: HoleFigures,
  to: HoleFigures,
  loop: WalkFigures['loop'],
): WalkFigures | undefined {
  const planned = walks.get(`${from.id}>${to.id}`);
  if (planned) return planned;
  const straight = walkBetween(loop, { hole: from.id, figures: from }, { hole: to.id, figures: to }, []);
  return straight && { ...straight, crossings: [] };
}

/**
 * All walks between the holes of a round together; to and from a base is left out. The limits are for 17 walks and
 * taken in proportion for other rounds.
 *
 * @param between  the walks from hole to hole, those between loops as `walkBetweenLoops` has them
 */
export function checkWalksInAll(
  round: Round,
  order: readonly HoleId[],
  between: readonly WalkFigures[],
  settings: Settings,
): readonly Finding[] {
  if (between.length === 0) return [];
  const measured = toMillimetre(between.reduce((sum, { distance }) => sum + distance, 0));
  const share = between.length / CALIBRATED_WALKS;
  const tiers = tiersOf('long-walk-in-all', settings).map((tier) => ({
    ...tier,
    limit: toMillimetre(tier.limit * share),
  }));
  const tier = tierOver(tiers, measured);
  if (!tier) return [];
  return [
    {
      key: `long-walk-in-all|${round.id}`,
      code: 'long-walk-in-all',
      ...tier,
      holes: [],
      features: [],
      measured,
      unit: 'm',
      worse: 'more',
      place: { type: 'round' },
      detail: { round: round.name, walks: between.length, holes: order.length },
      safety: false,
    },
  ];
}
