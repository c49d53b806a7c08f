import type { FeatureGeometry, SitePoint } from '@loopwright/model';

/** What a feature reaches to: its outer outline, its line, or its one place. */
export function outerPoints(geometry: FeatureGeometry): readonly SitePoint[] {
  if (geometry.type === 'point') return [geometry.at];
  return geometry.type === 'line' ? geometry.points : (geometry.rings[0] ?? []);
}
