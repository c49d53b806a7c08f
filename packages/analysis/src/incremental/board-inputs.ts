import type { Plan, Settings, TeeSet } from '@loopwright/model';
import { settingsOf } from '@loopwright/model';
import { type ClearanceLimits, clearanceLimits } from '../clearance/limits.ts';
import { type FeatureIndex, featureIndex } from '../feature-index.ts';
import { openMemory } from './memory.ts';

/** What the whole board has in common; each part keeps its identity until it says something else. */
export interface BoardInputs {
  readonly settings: Settings;
  readonly limits: ClearanceLimits;
  readonly teeSets: readonly TeeSet[];
  readonly features: FeatureIndex;
}

/**
 * Recognises settings, tee sets and site between runs even where their containers were built anew:
 * settings and tee sets by what they say, features and boundary by identity.
 */
export function openBoardInputs(): (plan: Plan) => BoardInputs {
  const settings = openMemory<Settings>();
  const limits = openMemory<ClearanceLimits>();
  const teeSets = openMemory<readonly TeeSet[]>();
  const features = openMemory<FeatureIndex>();
  return (plan) => {
    const overrides = Object.entries(plan.settings).sort(([a], [b]) => (a < b ? -1 : 1));
    const inForce = settings.recall('settings', overrides.flat(), () => settingsOf(plan.settings));
    const { site } = plan;
    return {
      settings: inForce,
      limits: limits.recall('limits', [inForce], () => clearanceLimits(inForce)),
      teeSets: teeSets.recall(
        'tee sets',
        plan.teeSets.flatMap(({ id, player }) => [id, player]),
        () => plan.teeSets,
      ),
      features: features.recall('site', [site.boundary, ...site.features], () => featureIndex(site)),
    };
  };
}
