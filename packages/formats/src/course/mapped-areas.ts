import type { Ring, SitePoint } from '@loopwright/model';
import type { Element, LonLat } from '../geojson/element.ts';
import { ringOnSite } from './site-features.ts';

/** One outer outline of a mapped tee or green, and the element it came from. */
export interface MappedArea {
  readonly element: Element;
  readonly ring: Ring;
}

/** Each part of the areas by itself; parts without extent are none. */
export function mappedAreas(
  elements: readonly Element[],
  toSite: (position: LonLat) => SitePoint,
): readonly MappedArea[] {
  const thinned = { count: 0, within: 0 };
  return elements.flatMap(({ tags, shape }) => {
    if (shape.type !== 'area') return [];
    return shape.parts.flatMap((rings) => {
      const outer = rings[0] && ringOnSite(rings[0], toSite, thinned);
      return outer ? [{ element: { tags, shape: { type: 'area' as const, parts: [rings] } }, ring: outer }] : [];
    });
  });
}
