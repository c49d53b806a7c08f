import { type Feature, type FeatureGeometry, LIMITS } from '@loopwright/model';
import type { Reading } from '../reading/reading.ts';
import { addThings } from './add-things.ts';
import type { EditNamed, EditWrites } from './edit-named.ts';
import { FEATURES } from './thing-kinds.ts';

/** How many points it takes to draw this. */
function pointsOf(geometry: FeatureGeometry): number {
  if (geometry.type === 'area') return geometry.rings.reduce((sum, ring) => sum + ring.length, 0);
  return geometry.type === 'line' ? geometry.points.length : 1;
}

const pointsOfAll = (features: readonly Feature[]) =>
  features.reduce((sum, { geometry }) => sum + pointsOf(geometry), 0);

/**
 * New features, one just drawn or all of an imported file: all of them or none. `nothing` when the board cannot take as
 * many, or when they have more points than can be sent at once or than a board takes: importers look first.
 */
export function addFeatures({ features }: EditNamed<'add features'>, reading: Reading): EditWrites {
  const fresh = pointsOfAll(features);
  if (fresh > LIMITS.featurePointsAtOnce) return 'nothing';
  if (fresh + pointsOfAll(reading.plan.site.features) > LIMITS.featurePoints) return 'nothing';
  return addThings(FEATURES, reading, features);
}
