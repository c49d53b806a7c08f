import { type Feature, type FeatureGeometry, type ImageLayer, presetOf, type Site } from '@loopwright/model';
import { APRON, BOUNDARY, FOOTPRINTS, LAID_FEATURES, LAID_MARKS, type LaidFeature } from './laid-land.ts';
import { at, outlined } from './place.ts';

export const SITE_NAME = 'Ferrow Saltings';
export const BASE_ID = 'clubhouse';

const INVENTED =
  'An invented site: no such land, road, people or club exist. Made to try the board on, with faults left in on purpose.';

/** The invented land, with the picture under it where there is one. */
export function demoSite(images: readonly ImageLayer[]): Site {
  return {
    name: SITE_NAME,
    note: INVENTED,
    north: 0,
    boundary: { outlines: [outlined(BOUNDARY)], inner: [], tolerance: 0 },
    bases: [{ id: BASE_ID, name: 'Clubhouse', apron: at(APRON), footprints: FOOTPRINTS.map(outlined) }],
    marks: LAID_MARKS.map(({ place, ...mark }) => ({ ...mark, at: at(place) })),
    features: LAID_FEATURES.map(featureFrom).sort((a, b) => (a.id < b.id ? -1 : 1)),
    images,
  };
}

function featureFrom({ id, kind, name, buffer, height, authority, note, ...laid }: LaidFeature): Feature {
  const preset = presetOf(kind);
  return {
    id,
    kind,
    name,
    geometry: geometryOf(laid),
    allows: preset.allows,
    buffer: buffer ?? preset.buffer,
    ...(authority && { authority }),
    ...(note && { note }),
    ...(height !== undefined && { height }),
  };
}

function geometryOf({ area, line, point }: Pick<LaidFeature, 'area' | 'line' | 'point'>): FeatureGeometry {
  if (area) return { type: 'area', rings: [outlined(area)] };
  if (line) return { type: 'line', points: outlined(line) };
  if (point) return { type: 'point', at: at(point) };
  throw new RangeError('geometryOf: a laid feature has an area, a line or a point');
}
