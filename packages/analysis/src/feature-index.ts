import { type Box, boundsOf, boxIndex, grown } from '@loopwright/geometry';
import type { Boundary, Feature, Site, SitePoint } from '@loopwright/model';

/** The site's features, found by place. */
export interface FeatureIndex {
  readonly boundary?: Boundary;
  readonly features: readonly Feature[];
  /** Features whose box, grown by their own buffer, meets this box; in the plan's order. */
  near(box: Box): readonly Feature[];
}

/** Every point of a feature's geometry. */
export function featurePoints(feature: Feature): readonly SitePoint[] {
  const { geometry } = feature;
  if (geometry.type === 'point') return [geometry.at];
  return geometry.type === 'line' ? geometry.points : geometry.rings.flat();
}

/** Indexes a site's features once; the site is replaced, never changed. O(n log n). */
export function featureIndex(site: Site): FeatureIndex {
  const features = site.features.filter((feature) => featurePoints(feature).length > 0);
  const index = boxIndex(features.map((feature) => grown(boundsOf(featurePoints(feature)), feature.buffer)));
  return {
    ...(site.boundary && { boundary: site.boundary }),
    features,
    near: (box) => index.search(box).flatMap((place) => features[place] ?? []),
  };
}
