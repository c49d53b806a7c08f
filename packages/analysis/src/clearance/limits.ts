import { roundedCosine, roundedSine } from '@loopwright/geometry';
import type { Settings } from '@loopwright/model';
import { farthestOf, type Tier, tiersOf } from '../findings/tier.ts';
import { type AlongsideRule, alongsideRule } from './alongside.ts';

/** The limits of clearance in the form the checks use, worked out once for a board's settings. */
export interface ClearanceLimits {
  readonly settings: Settings;
  readonly spacing: readonly Tier[];
  readonly spacingNext: readonly Tier[];
  readonly landingTee: readonly Tier[];
  readonly landingGreen: readonly Tier[];
  readonly landingLanding: readonly Tier[];
  readonly landingLine: readonly Tier[];
  readonly greenGreen: readonly Tier[];
  readonly greenTee: readonly Tier[];
  readonly greenNextTee: readonly Tier[];
  readonly walkLanding: readonly Tier[];
  readonly fanTee: FanTiers;
  readonly fanGreen: FanTiers;
  readonly fanNext: FanTiers;
  /** Tangents of the fan's angles. */
  readonly inner: number;
  readonly outer: number;
  readonly alongside: AlongsideRule;
  /** No limit between two holes reaches further, apart from their fans. */
  readonly farthest: number;
}

export interface FanTiers {
  readonly stop: number;
  readonly look: number;
  readonly mention: number;
  readonly tiers: readonly Tier[];
}

/** Tangent of an angle in degrees, the same on every engine. */
export function tangent(degrees: number): number {
  return roundedSine(degrees) / roundedCosine(degrees);
}

export function clearanceLimits(settings: Settings): ClearanceLimits {
  const between = {
    spacing: tiersOf('spacing', settings),
    spacingNext: tiersOf('spacing-next', settings),
    landingTee: tiersOf('landing-tee', settings),
    landingGreen: tiersOf('landing-green', settings),
    landingLanding: tiersOf('landing-landing', settings),
    landingLine: tiersOf('landing-line', settings),
    greenGreen: tiersOf('green-green', settings),
    greenTee: tiersOf('green-tee', settings),
    greenNextTee: tiersOf('green-next-tee', settings),
    walkLanding: tiersOf('walk-landing', settings),
  };
  const farthest = Math.max(...Object.values(between).map(farthestOf)) + settings['spacing-opposed-extra'];
  return {
    settings,
    ...between,
    fanTee: fanTiers(tiersOf('fan-tee', settings)),
    fanGreen: fanTiers(tiersOf('fan-green', settings)),
    fanNext: fanTiers(tiersOf('fan-next', settings)),
    inner: tangent(settings['fan-inner-angle']),
    outer: tangent(settings['fan-outer-angle']),
    alongside: alongsideRule(settings),
    farthest,
  };
}

function fanTiers(tiers: readonly Tier[]): FanTiers {
  const limitOf = (severity: Tier['severity']) => tiers.find((tier) => tier.severity === severity)?.limit ?? 0;
  return { stop: limitOf('stop'), look: limitOf('look'), mention: limitOf('mention'), tiers };
}
