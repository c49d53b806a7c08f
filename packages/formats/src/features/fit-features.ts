import { type Feature, type FeatureGeometry, LIMITS, type Site } from '@loopwright/model';
import { counted, type NoteBook } from '../note.ts';

/** How many points it takes to draw this. */
function pointsOf({ geometry }: { readonly geometry: FeatureGeometry }): number {
  if (geometry.type === 'area') return geometry.rings.reduce((sum, ring) => sum + ring.length, 0);
  return geometry.type === 'line' ? geometry.points.length : 1;
}

/**
 * The features that the board still takes, in the file's order: by number and by points, on the board and in one step.
 * What does not fit is counted in a note.
 */
export function fitFeatures(features: readonly Feature[], site: Site, notes: NoteBook): readonly Feature[] {
  const room = LIMITS.features - site.features.length;
  const onBoard = site.features.reduce((sum, feature) => sum + pointsOf(feature), 0);
  const most = Math.max(0, Math.min(LIMITS.featurePointsAtOnce, LIMITS.featurePoints - onBoard));
  let points = 0;
  const kept: Feature[] = [];
  for (const feature of features) {
    const more = pointsOf(feature);
    if (kept.length >= room || points + more > most) continue;
    points += more;
    kept.push(feature);
  }
  const lost = features.length - kept.length;
  if (lost > 0)
    notes.add(
      `Left out, since the board takes ${LIMITS.features} features and ${LIMITS.featurePointsAtOnce} points at once: ${counted(lost, 'feature')}. Cut the file to what matters, or bring it in by parts.`,
    );
  return kept;
}
