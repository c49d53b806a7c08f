import { toMillimetre } from '@loopwright/model';
import type { Finding } from '../figures.ts';
import type { FindingCode } from '../findings/catalogue.ts';
import { type Tier, tierUnder } from '../findings/tier.ts';
import { betweenPlaces, clearanceFinding } from './clearance-finding.ts';
import { type Closest, closestPlaces, closestToLine } from './closest.ts';
import { type HoleReach, states } from './hole-reach.ts';
import type { ClearanceLimits } from './limits.ts';

/**
 * One hole's landing areas against another's tees, green and line of play: straight distances.
 *
 * A shared green and a shared fairway are stated relations: what follows from them is not counted again.
 */
export function checkLandings(from: HoleReach, to: HoleReach, limits: ClearanceLimits): readonly Finding[] {
  if (from.landings.length === 0) return [];
  const findings: Finding[] = [];
  add(findings, 'landing-tee', from, to, closestPlaces(from.landings, to.tees), limits.landingTee);
  if (!states('shares its green with', from, to)) {
    add(findings, 'landing-green', from, to, closestPlaces(from.landings, [to.green.centre]), limits.landingGreen);
  }
  if (!states('shares fairway with', from, to) && !states('crosses on purpose', from, to)) {
    add(findings, 'landing-line', from, to, closestToLine(from.landings, to.line), limits.landingLine);
  }
  return findings;
}

/** Landing areas of two holes that lie close together. */
export function checkLandingsApart(first: HoleReach, second: HoleReach, limits: ClearanceLimits): readonly Finding[] {
  if (states('shares fairway with', first, second)) return [];
  const findings: Finding[] = [];
  const closest = closestPlaces(first.landings, second.landings);
  add(findings, 'landing-landing', first, second, closest, limits.landingLanding);
  return findings;
}

function add(
  findings: Finding[],
  code: FindingCode,
  from: HoleReach,
  to: HoleReach,
  closest: Closest | undefined,
  tiers: readonly Tier[],
): void {
  const measured = closest && toMillimetre(closest.distance);
  const tier = measured === undefined ? undefined : tierUnder(tiers, measured);
  if (!closest || measured === undefined || !tier) return;
  const place = betweenPlaces(closest.first, closest.second);
  findings.push(clearanceFinding({ code, holes: [from.id, to.id], measured, tier, place }));
}
