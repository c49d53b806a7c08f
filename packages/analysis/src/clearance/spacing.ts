import type { Finding } from '../figures.ts';
import { type Tier, tierUnder } from '../findings/tier.ts';
import { alongside } from './alongside.ts';
import { betweenPlaces, clearanceFinding } from './clearance-finding.ts';
import { type HoleReach, states } from './hole-reach.ts';
import type { ClearanceLimits } from './limits.ts';
import type { PairRelation } from './pair-relation.ts';

/**
 * Holes alongside with too little between them. Consecutive holes have limits of their own; opposed play is worse
 * than the same way, so more is asked of it for `look` and `mention`. A shared fairway is shown as stated.
 */
export function checkSpacing(
  first: HoleReach,
  second: HoleReach,
  relation: PairRelation,
  limits: ClearanceLimits,
): readonly Finding[] {
  const found = alongside(first, second, limits.alongside);
  if (!found) return [];
  const tiers = relation === 'next' ? limits.spacingNext : limits.spacing;
  const extra = found.opposed ? limits.settings['spacing-opposed-extra'] : 0;
  const tier = tierUnder(extra > 0 ? tiers.map((each) => widened(each, extra)) : tiers, found.spacing);
  if (!tier) return [];
  const stated = states('shares fairway with', first, second);
  return [
    clearanceFinding({
      code: 'holes-alongside',
      holes: [first.id, second.id],
      measured: found.spacing,
      tier: stated ? { ...tier, severity: 'mention' } : tier,
      place: betweenPlaces(...found.places),
      detail: {
        play: found.opposed ? 'opposed' : 'same way',
        stretch: found.stretch,
        ...(stated && { stated: 'shares fairway with' }),
      },
    }),
  ];
}

function widened(tier: Tier, extra: number): Tier {
  return tier.severity === 'stop' ? tier : { ...tier, limit: tier.limit + extra };
}
