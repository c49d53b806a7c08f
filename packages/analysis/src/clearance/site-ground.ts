import type { Base, Feature } from '@loopwright/model';
import type { FeatureIndex } from '../feature-index.ts';
import type { Finding } from '../figures.ts';
import { checkHoleBoundary } from './boundary.ts';
import { checkHoleFeatures } from './features.ts';
import type { HoleReach } from './hole-reach.ts';
import type { ClearanceLimits } from './limits.ts';
import { isPublic } from './public-ground.ts';
import { type RangePlay, rangePlay } from './range.ts';
import { checkRangeAndPublic, checkRangeFan } from './range-fan.ts';
import { type SiteEdges, siteEdges } from './site-edges.ts';

/** What the site says to every hole: its edges, its features, how its range plays. */
export interface SiteGround {
  readonly features: FeatureIndex;
  readonly edges: SiteEdges | undefined;
  readonly ranges: readonly RangePlay[];
  /** Found on the site itself, whatever the routing: the range towards public ground. */
  readonly findings: readonly Finding[];
}

/** Prepares a site once; it depends on its features, boundary and bases, and on the limits. O(n log n). */
export function siteGround(features: FeatureIndex, bases: readonly Base[], limits: ClearanceLimits): SiteGround {
  const isRange = (feature: Feature) => feature.kind === 'range';
  const ranges = features.features.filter(isRange).flatMap((range) => rangePlay(range, bases, limits.settings) ?? []);
  const publicGround = features.features.filter(isPublic);
  return {
    features,
    edges: features.boundary && siteEdges(features.boundary),
    ranges,
    findings: ranges.flatMap((range) => publicGround.flatMap((ground) => checkRangeAndPublic(range, ground, limits))),
  };
}

/**
 * Everything that can be too close between a hole and its site: boundary, features by what they allow, public ground,
 * the practice range. It depends on nothing but the three things given.
 */
export function checkHoleOnSite(hole: HoleReach, ground: SiteGround, limits: ClearanceLimits): readonly Finding[] {
  return [
    ...(ground.edges ? checkHoleBoundary(hole, ground.edges, limits) : []),
    ...checkHoleFeatures(hole, ground.features, limits),
    ...ground.ranges.flatMap((range) => checkRangeFan(hole, range, limits)),
  ];
}
