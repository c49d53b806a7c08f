import { boundsOf, grown } from '@loopwright/geometry';
import type { FeatureKind } from '@loopwright/model';
import type { FeatureIndex } from '../feature-index.ts';
import type { Finding, WalkFigures } from '../figures.ts';
import { endsOf } from '../walk/walk-finding.ts';
import { betweenPlaces, clearanceFinding } from './clearance-finding.ts';
import { lineBesideFeature, lineOverFeature } from './feature-distance.ts';
import type { ClearanceLimits } from './limits.ts';

/** Roads, water and the range are told with the walk; buildings stand where walks begin and end. */
const TOLD_ELSEWHERE: ReadonlySet<FeatureKind> = new Set(['public road', 'public path', 'water', 'building', 'range']);

/**
 * A walk over ground that may not be walked, a `look`, or within the buffer kept around it, a `mention`.
 * Measured: metres to it; below 0, metres over it.
 *
 * Source: what the feature allows and its buffer, as set on the board.
 */
export function checkWalkFeatures(walk: WalkFigures, index: FeatureIndex, limits: ClearanceLimits): readonly Finding[] {
  if (walk.path.length < 2) return [];
  const extra = limits.settings['feature-walk'];
  const findings: Finding[] = [];
  for (const feature of index.near(grown(boundsOf(walk.path), extra))) {
    if (feature.allows.walk || TOLD_ELSEWHERE.has(feature.kind)) continue;
    const limit = feature.buffer + extra;
    const over = lineOverFeature(feature, walk.path);
    const found = over ?? (limit > 0 ? lineBesideFeature(feature, walk.path) : undefined);
    if (!found || found.distance >= Math.max(limit, 1e-3)) continue;
    const finding = clearanceFinding({
      code: 'walk-over-feature',
      holes: endsOf(walk),
      features: [feature.id],
      measured: found.distance,
      tier: { severity: over ? 'look' : 'mention', limit, setting: 'feature-walk' },
      place: betweenPlaces(found.first, found.second),
      detail: { kind: feature.kind },
      about: walk.key,
    });
    findings.push({ ...finding, loop: walk.loop, safety: feature.kind === 'neighbour' });
  }
  return findings;
}
