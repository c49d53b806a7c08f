import { pointAlong } from '@loopwright/geometry';
import { type Feature, type SitePoint, toMillimetre } from '@loopwright/model';
import type { Finding } from '../figures.ts';
import type { FindingCode } from '../findings/catalogue.ts';
import type { Tier } from '../findings/tier.ts';
import { clearanceFinding } from './clearance-finding.ts';
import { eachPiece } from './feature-distance.ts';
import type { HoleReach } from './hole-reach.ts';
import { isWorse } from './in-fan.ts';
import type { ClearanceLimits } from './limits.ts';
import { fromRange, type RangePlay } from './range.ts';

/** Metres between the places of a line that are tried. */
const STEP = 10;

interface Target {
  readonly part: 'tee' | 'green' | 'landing area' | 'line of play' | 'edge';
  readonly at: SitePoint;
}

interface Hit extends Target {
  readonly aside: number;
  readonly ahead: number;
  readonly tier: Tier;
}

/**
 * A hole inside the practice range's fan: straight out from the stands a `stop`, inside the inner angle from their
 * ends a `look`, inside the outer a `mention`. Measured: metres outside the strip straight out from the stands.
 *
 * Source: angles as of shot fans; reach the scratch man's drive and roll; severities common practice, no source.
 */
export function checkRangeFan(hole: HoleReach, range: RangePlay, limits: ClearanceLimits): readonly Finding[] {
  const worst = worstHit(holeTargets(hole), range, limits);
  return worst ? [rangeFinding('in-range-fan', [hole.id], [range.feature], worst, range)] : [];
}

/** Roads, public paths and neighbours inside the practice range's fan. Straight out or inside the inner angle: `stop`. */
export function checkRangeAndPublic(range: RangePlay, ground: Feature, limits: ClearanceLimits): readonly Finding[] {
  const worst = worstHit(featureTargets(ground), range, limits);
  if (!worst) return [];
  const tier: Tier = { ...worst.tier, severity: worst.tier.severity === 'look' ? 'stop' : worst.tier.severity };
  const finding = rangeFinding('range-and-public', [], [range.feature, ground], { ...worst, tier }, range);
  return [{ ...finding, detail: { ...finding.detail, kind: ground.kind } }];
}

function holeTargets(hole: HoleReach): readonly Target[] {
  const steps = Math.floor(hole.length / STEP);
  return [
    ...hole.tees.map((at) => ({ part: 'tee', at }) as const),
    { part: 'green', at: hole.green.centre },
    ...hole.landings.map((at) => ({ part: 'landing area', at }) as const),
    ...Array.from(
      { length: steps },
      (_, i) => ({ part: 'line of play', at: pointAlong(hole.line, i * STEP) }) as const,
    ),
  ];
}

function featureTargets(feature: Feature): readonly Target[] {
  const targets: Target[] = [];
  eachPiece(feature, (a, b) => {
    const length = Math.sqrt((b.x - a.x) ** 2 + (b.y - a.y) ** 2);
    const steps = Math.max(1, Math.ceil(length / STEP));
    for (let i = 0; i <= steps; i++) targets.push({ part: 'edge', at: pointAlong([a, b], (length * i) / steps) });
  });
  return targets;
}

function worstHit(targets: readonly Target[], range: RangePlay, limits: ClearanceLimits): Hit | undefined {
  let worst: Hit | undefined;
  for (const target of targets) {
    const seen = fromRange(range, target.at);
    const tier = tierFor(seen.ahead, toMillimetre(seen.aside), range, limits);
    if (!tier) continue;
    const nearer = worst && worst.tier.severity === tier.severity && seen.aside < worst.aside;
    if (!worst || isWorse(tier.severity, worst.tier.severity) || nearer) worst = { ...target, ...seen, tier };
  }
  return worst;
}

function tierFor(ahead: number, aside: number, range: RangePlay, limits: ClearanceLimits): Tier | undefined {
  if (ahead <= 0 || ahead > range.reach || aside > ahead * limits.outer) return undefined;
  if (aside > ahead * limits.inner) {
    return { severity: 'mention', limit: toMillimetre(ahead * limits.outer), setting: 'fan-outer-angle' };
  }
  const limit = toMillimetre(ahead * limits.inner);
  return { severity: aside === 0 ? 'stop' : 'look', limit, setting: 'fan-inner-angle' };
}

function rangeFinding(
  code: FindingCode,
  holes: readonly string[],
  features: readonly Feature[],
  { part, at, aside, ahead, tier }: Hit,
  range: RangePlay,
): Finding {
  return clearanceFinding({
    code,
    holes,
    features: features.map(({ id }) => id),
    measured: aside,
    tier,
    place: { type: 'line', points: [range.from, at] },
    detail: { part, ahead: toMillimetre(ahead) },
  });
}
