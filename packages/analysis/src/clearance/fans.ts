import { type SitePoint, toMillimetre } from '@loopwright/model';
import type { Finding } from '../figures.ts';
import type { FindingCode } from '../findings/catalogue.ts';
import type { Tier } from '../findings/tier.ts';
import { clearanceFinding } from './clearance-finding.ts';
import { type HoleReach, states } from './hole-reach.ts';
import { inFan, isWorse, onShotLine } from './in-fan.ts';
import type { ClearanceLimits, FanTiers } from './limits.ts';
import type { PairRelation } from './pair-relation.ts';
import type { Shot } from './shots.ts';

/**
 * Another hole's tees, green and landing areas inside a hole's shot fans.
 *
 * Measured: metres from the line of the shot. Inside the inner angle is a `stop`, between the angles a `look`;
 * whatever the angle, nearer to the line than the `stop` distance is a `stop`, and beyond the `look` and `mention`
 * distances, in the far wide corners that few balls reach, the severity is one step less. Consecutive holes lie
 * close by their nature: there the distance decides, and the outer angle is at most a `look`. So the next tee is
 * judged by the approach sector it lies in, not by a radius about the green.
 * Landing areas, where players see what is coming, are one step less.
 *
 * Source: angles and distances are settings, compared with 31 mapped courses.
 */
export function checkFans(
  from: HoleReach,
  to: HoleReach,
  relation: PairRelation,
  limits: ClearanceLimits,
): readonly Finding[] {
  if (from.shots.length === 0) return [];
  const findings: Finding[] = [];
  const next = relation === 'next';
  const tee = worstIn(from.shots, to.tees, limits, next ? nextTier : otherTier, next ? limits.fanNext : limits.fanTee);
  if (tee) findings.push(fanFinding('tee-in-fan', from, to, tee));
  if (!states('shares its green with', from, to)) {
    const tiers = next ? limits.fanNext : limits.fanGreen;
    const green = worstIn(from.shots, [to.green.centre], limits, next ? nextTier : otherTier, tiers);
    if (green) findings.push(fanFinding('green-in-fan', from, to, green));
  }
  if (!next && !states('shares fairway with', from, to) && !states('crosses on purpose', from, to)) {
    const landing = worstIn(from.shots, to.landings, limits, landingTier, limits.fanTee);
    if (landing) findings.push(fanFinding('landing-in-fan', from, to, landing));
  }
  return findings;
}

interface InFan {
  readonly shot: Shot;
  readonly place: SitePoint;
  readonly ahead: number;
  readonly aside: number;
  readonly tier: Tier;
}

type Judge = (ahead: number, aside: number, tiers: FanTiers, limits: ClearanceLimits) => Tier | undefined;

function worstIn(
  shots: readonly Shot[],
  places: readonly SitePoint[],
  limits: ClearanceLimits,
  judge: Judge,
  tiers: FanTiers,
): InFan | undefined {
  let worst: InFan | undefined;
  for (const shot of shots) {
    for (const place of places) {
      const seen = inFan(shot, place, limits.outer);
      if (!seen) continue;
      const tier = judge(toMillimetre(seen.ahead), toMillimetre(seen.aside), tiers, limits);
      if (!tier) continue;
      const sameButNearer = worst && tier.severity === worst.tier.severity && seen.aside < worst.aside;
      if (!worst || isWorse(tier.severity, worst.tier.severity) || sameButNearer)
        worst = { shot, place, ...seen, tier };
    }
  }
  return worst;
}

function otherTier(ahead: number, aside: number, tiers: FanTiers, limits: ClearanceLimits): Tier {
  const closest = tiers.tiers[0];
  if (closest && aside < tiers.stop) return closest;
  const inner = ahead * limits.inner;
  if (aside < inner && aside < tiers.look) {
    return { severity: 'stop', limit: toMillimetre(Math.min(inner, tiers.look)), setting: 'fan-inner-angle' };
  }
  const limit = toMillimetre(ahead * limits.outer);
  const severity = aside < inner || aside < tiers.mention ? 'look' : 'mention';
  return { severity, limit, setting: 'fan-outer-angle' };
}

function nextTier(ahead: number, aside: number, tiers: FanTiers, limits: ClearanceLimits): Tier | undefined {
  const tier = tiers.tiers.find(({ limit }) => aside < limit);
  if (tier?.severity !== 'stop' || aside < ahead * limits.inner) return tier;
  return { severity: 'look', limit: tiers.look, setting: 'fan-next-look' };
}

function landingTier(ahead: number, aside: number, tiers: FanTiers, limits: ClearanceLimits): Tier {
  const isInner = aside < ahead * limits.inner && aside < tiers.mention;
  return isInner
    ? {
        severity: 'look',
        limit: toMillimetre(Math.min(ahead * limits.inner, tiers.mention)),
        setting: 'fan-inner-angle',
      }
    : { severity: 'mention', limit: toMillimetre(ahead * limits.outer), setting: 'fan-outer-angle' };
}

function fanFinding(
  code: FindingCode,
  from: HoleReach,
  to: HoleReach,
  { shot, place, ahead, aside, tier }: InFan,
): Finding {
  return clearanceFinding({
    code,
    holes: [from.id, to.id],
    measured: aside,
    tier,
    place: { type: 'line', points: [onShotLine(shot, ahead), place] },
    detail: { shot: shot.kind, ahead: toMillimetre(ahead) },
  });
}
