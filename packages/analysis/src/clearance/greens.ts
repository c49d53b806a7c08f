import { distanceBetween } from '@loopwright/geometry';
import { type SitePoint, toMillimetre } from '@loopwright/model';
import type { Finding } from '../figures.ts';
import type { FindingCode } from '../findings/catalogue.ts';
import { type Tier, tierUnder } from '../findings/tier.ts';
import { betweenPlaces, clearanceFinding } from './clearance-finding.ts';
import { closestPlaces } from './closest.ts';
import { type HoleReach, states } from './hole-reach.ts';
import type { ClearanceLimits } from './limits.ts';
import type { PairRelation } from './pair-relation.ts';

/** Greens of two holes, centre to centre. A green that is shared on purpose is shown as stated. */
export function checkGreensApart(first: HoleReach, second: HoleReach, limits: ClearanceLimits): readonly Finding[] {
  const a = first.green.centre;
  const b = second.green.centre;
  const measured = toMillimetre(distanceBetween(a, b));
  const tier = tierUnder(limits.greenGreen, measured);
  if (!tier) return [];
  const stated = states('shares its green with', first, second);
  return [
    clearanceFinding({
      code: 'green-green',
      holes: [first.id, second.id],
      measured,
      tier: stated ? { ...tier, severity: 'mention' } : tier,
      place: betweenPlaces(a, b),
      ...(stated && { detail: { stated: 'shares its green with' } }),
    }),
  ];
}

/** A green's centre and another hole's nearest tee. The next tee may be nearer: it has limits of its own. */
export function checkGreenAndTees(
  from: HoleReach,
  to: HoleReach,
  relation: PairRelation,
  limits: ClearanceLimits,
): readonly Finding[] {
  return relation === 'next'
    ? greenAndTees('green-next-tee', from, to, limits.greenNextTee)
    : greenAndTees('green-tee', from, to, limits.greenTee);
}

function greenAndTees(code: FindingCode, from: HoleReach, to: HoleReach, tiers: readonly Tier[]): readonly Finding[] {
  const places: readonly SitePoint[] = [from.green.centre];
  const closest = closestPlaces(places, to.tees);
  const measured = closest && toMillimetre(closest.distance);
  const tier = measured === undefined ? undefined : tierUnder(tiers, measured);
  if (!closest || measured === undefined || !tier) return [];
  const place = betweenPlaces(closest.first, closest.second);
  return [clearanceFinding({ code, holes: [from.id, to.id], measured, tier, place })];
}
