import type { FeatureKind } from '@loopwright/model';
import type { Tags } from './element.ts';

/** What a mapped thing is to a golf course. */
export type ElementKind =
  | { readonly is: 'hole' | 'tee' | 'green' | 'boundary' | 'clubhouse' }
  | { readonly is: 'feature'; readonly kind: FeatureKind; readonly name?: string }
  /** Known, but without a place on a board: counted by this name. */
  | { readonly is: 'left out'; readonly what: string }
  | { readonly is: 'unknown' };

const feature = (kind: FeatureKind): ElementKind => ({ is: 'feature', kind });
const leftOut = (what: string): ElementKind => ({ is: 'left out', what });

/** Values of `golf=*`, as documented for the open map. Source: the OpenStreetMap wiki, Key:golf, as known in 2025. */
const GOLF: ReadonlyMap<string, ElementKind> = new Map([
  ['hole', { is: 'hole' }],
  ['tee', { is: 'tee' }],
  ['green', { is: 'green' }],
  ['fairway', feature('fairway')],
  ['bunker', feature('bunker')],
  ['water_hazard', feature('water')],
  ['lateral_water_hazard', feature('water')],
  ['driving_range', feature('range')],
  ['clubhouse', { is: 'clubhouse' }],
  ['cartpath', feature('course path')],
  ['path', feature('course path')],
  ['pin', leftOut('pin')],
  ['rough', leftOut('area of rough')],
]);

/** Ways for people who are not playing, on foot or riding; the rest of `highway=*` are roads. */
const PATHS = new Set(['path', 'footway', 'cycleway', 'bridleway', 'steps', 'pedestrian', 'track', 'corridor']);
/** Things along roads that are no road. */
const NOT_WAYS = new Set([
  'crossing',
  'traffic_signals',
  'stop',
  'give_way',
  'street_lamp',
  'bus_stop',
  'turning_circle',
]);
const CLOSED_TO_THE_PUBLIC = new Set(['private', 'no', 'customers', 'members']);

/**
 * What a thing with these tags is. The golf tag decides before all others: a cart path is also mapped as a service road.
 *
 * A way that does not say it is closed to the public is public: the careful reading.
 */
export function kindOf(tags: Tags): ElementKind {
  if (tags.tunnel !== undefined && tags.tunnel !== 'no') return leftOut('way or stream under the ground');
  const golf = tags.golf === undefined ? undefined : GOLF.get(tags.golf);
  if (golf) return golf;
  if (tags.leisure === 'golf_course') return { is: 'boundary' };
  if (tags.building === 'clubhouse' || tags.amenity === 'clubhouse') return { is: 'clubhouse' };
  if (tags.natural === 'water' || tags.natural === 'bay' || tags.water !== undefined) return feature('water');
  if (tags.waterway !== undefined) return feature('water');
  if (tags.natural === 'wetland') return feature('wetland');
  if (tags.natural === 'wood' || tags.landuse === 'forest' || tags.natural === 'tree_row') return feature('trees');
  if (tags.highway !== undefined && !NOT_WAYS.has(tags.highway)) return kindOfWay(tags.highway, tags);
  if (tags.building !== undefined && tags.building !== 'no') return feature('building');
  return { is: 'unknown' };
}

function kindOfWay(highway: string, tags: Tags): ElementKind {
  if (tags.golf_cart === 'designated') return feature('course path');
  const isClosed = CLOSED_TO_THE_PUBLIC.has(tags.access ?? '');
  if (PATHS.has(highway)) return feature(isClosed ? 'course path' : 'public path');
  return feature(isClosed && (highway === 'service' || highway === 'track') ? 'course path' : 'public road');
}
