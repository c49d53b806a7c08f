import { isId } from '../ids.ts';
import { toMillimetre } from '../millimetre.ts';
import type { Allows, Feature, FeatureGeometry, FeatureKind } from '../site.ts';
import { isFields, parseEach, parseWord } from './fields.ts';
import { LIMITS } from './limits.ts';
import { parseNumber } from './number.ts';
import { parsePoint, parsePoints, parseRing } from './point.ts';
import { parseLines, parseName } from './text.ts';

/** Every kind of feature, in the order a list offers them. */
export const FEATURE_KINDS: readonly FeatureKind[] = [
  'water',
  'wetland',
  'trees',
  'protected',
  'easement',
  'flood line',
  'building',
  'public road',
  'public path',
  'neighbour',
  'utility',
  'landmark',
  'ground unit',
  'range',
  'bunker',
  'fairway',
  'course path',
  'other',
];

/** An area, a line of at least two points, or a point. */
export function parseFeatureGeometry(value: unknown): FeatureGeometry | undefined {
  if (!isFields(value)) return undefined;
  if (value.type === 'area') {
    const rings = parseEach(value.rings, LIMITS.ringsPerArea, parseRing);
    return rings && rings.length > 0 ? { type: 'area', rings } : undefined;
  }
  if (value.type === 'line') {
    const points = parsePoints(value.points);
    return points && points.length >= 2 ? { type: 'line', points } : undefined;
  }
  const at = value.type === 'point' ? parsePoint(value.at) : undefined;
  return at && { type: 'point', at };
}

/** What may be done there. What is not plainly allowed is taken as forbidden: the careful reading. */
export function parseAllows(value: unknown): Allows {
  const fields = isFields(value) ? value : {};
  return {
    carry: fields.carry === true,
    walk: fields.walk === true,
    mow: fields.mow === true,
    build: fields.build === true,
  };
}

/** Something that lies on the land: water, trees, a road, a neighbour. */
export function parseFeature(value: unknown): Feature | undefined {
  if (!isFields(value) || !isId(value.id)) return undefined;
  const kind = parseWord(value.kind, FEATURE_KINDS);
  const geometry = parseFeatureGeometry(value.geometry);
  if (kind === undefined || geometry === undefined) return undefined;
  const name = parseName(value.name, LIMITS.name);
  const authority = parseName(value.authority, LIMITS.name);
  const note = parseLines(value.note, LIMITS.note);
  const height = parseNumber(value.height, 0, LIMITS.height);
  return {
    id: value.id,
    kind,
    ...(name && { name }),
    geometry,
    allows: parseAllows(value.allows),
    buffer: toMillimetre(parseNumber(value.buffer, 0, LIMITS.buffer) ?? 0),
    ...(authority && { authority }),
    ...(note && { note }),
    ...(height !== undefined && { height: toMillimetre(height) }),
  };
}
