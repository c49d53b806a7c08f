import { type Feature, type FeatureKind, presetOf, type Site, type SitePoint } from '@loopwright/model';
import { type FeatureIndex, featureIndex } from '../feature-index.ts';

type Places = readonly (readonly [x: number, y: number])[];

const points = (places: Places): readonly SitePoint[] => places.map(([x, y]) => ({ x, y }));

/** For tests: an area of this kind, allowing what the kind does by itself. */
export function laidArea(kind: FeatureKind, outline: Places, buffer = 0): Feature {
  return {
    id: kind.replace(' ', '-'),
    kind,
    geometry: { type: 'area', rings: [points(outline)] },
    ...presetOf(kind),
    buffer,
  };
}

/** For tests: a way of this kind. */
export function laidWay(kind: FeatureKind, places: Places, id: string = kind.replace(' ', '-')): Feature {
  return { id, kind, geometry: { type: 'line', points: points(places) }, ...presetOf(kind) };
}

/** For tests: a site of nothing but these features. */
export function siteOf(...features: readonly Feature[]): FeatureIndex {
  const site: Site = { name: 'Invented', north: 0, bases: [], marks: [], features, images: [] };
  return featureIndex(site);
}
