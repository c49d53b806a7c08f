import { type Box, closestOnPolyline, distanceToRing, ringContains } from '@loopwright/geometry';
import type { Boundary, Feature, FeatureGeometry, Ring, SitePoint } from '@loopwright/model';
import type { SnapWishes } from '../instrument.ts';
import { type Guide, offsetGuide, placeGuide, ringGuide } from './guide.ts';

interface OutlineParts {
  readonly at: SitePoint;
  /** Metres on the ground. */
  readonly reach: number;
  /** The box about a thing's points, remembered by whoever asks. */
  readonly boxOf: (geometry: FeatureGeometry) => Box;
  readonly length: (metres: number) => string;
  readonly nameOf: (feature: string) => string;
}

/** A guide is looked for this much further out than it reaches, in reaches. */
const SPARE = 2;

/** What pulls beside features: the distance that is kept around each, or its own line for a vertex or a loose point. */
export function featureGuides(features: readonly Feature[], wishes: SnapWishes, parts: OutlineParts): readonly Guide[] {
  return features
    .filter(({ id, geometry, buffer }) => id !== wishes.without && isNear(geometry, buffer, parts))
    .flatMap((feature) => (isLoose(wishes) ? onItsLine(feature, parts) : atItsBuffer(feature, parts)));
}

const isLoose = (wishes: SnapWishes) => wishes.for === 'vertex' || wishes.for === 'anything';

function isNear(geometry: FeatureGeometry, buffer: number, { at, reach, boxOf }: OutlineParts): boolean {
  const box = boxOf(geometry);
  const room = buffer + reach * SPARE;
  return at.x > box.minX - room && at.x < box.maxX + room && at.y > box.minY - room && at.y < box.maxY + room;
}

function atItsBuffer({ id, geometry, buffer }: Feature, parts: OutlineParts): readonly Guide[] {
  if (buffer <= 0) return [];
  const look = { because: `${parts.length(buffer)} from ${parts.nameOf(id)}`, strength: 40, reach: 0.8 };
  if (geometry.type === 'point') return [ringGuide(geometry.at, buffer, look)];
  return [offsetGuide((p) => nearestOutside(geometry, p), buffer, look)];
}

/** The nearest place of an area's edge or a line; `undefined` within the area, where no distance is kept. */
function nearestOutside(geometry: Exclude<FeatureGeometry, { type: 'point' }>, p: SitePoint): SitePoint | undefined {
  if (geometry.type === 'line') return closestOnPolyline(p, geometry.points).point;
  const [outer, ...inner] = geometry.rings;
  if (!outer) return undefined;
  const hole = inner.find((ring) => ringContains(ring, p));
  if (hole) return distanceToRing(p, hole).point;
  return ringContains(outer, p) ? undefined : distanceToRing(p, outer).point;
}

function onItsLine({ id, geometry }: Feature, parts: OutlineParts): readonly Guide[] {
  const name = parts.nameOf(id);
  if (geometry.type === 'point') return [placeGuide(geometry.at, { because: name, strength: 76, reach: 0.9 })];
  return geometry.type === 'line'
    ? lineGuides(geometry.points, name, (p) => closestOnPolyline(p, geometry.points).point)
    : geometry.rings.flatMap((ring) => lineGuides(ring, name, (p) => distanceToRing(p, ring).point));
}

function lineGuides(
  corners: readonly SitePoint[],
  name: string,
  closest: (p: SitePoint) => SitePoint,
): readonly Guide[] {
  const edge = offsetGuide(closest, 0, { because: `on the line of ${name}`, strength: 20, reach: 0.7 });
  return [
    ...corners.map((corner) => placeGuide(corner, { because: `a corner of ${name}`, strength: 74, reach: 0.8 })),
    edge,
  ];
}

/**
 * What pulls beside the edge of the site: the distance at which nothing is noticed any more, or the edge itself for a
 * vertex or a loose point.
 *
 * @param inset  metres inside the drawn line
 */
export function boundaryGuides(
  boundary: Boundary | undefined,
  wishes: SnapWishes,
  inset: number,
  parts: Pick<OutlineParts, 'length'>,
): readonly Guide[] {
  if (!boundary || wishes.without === 'boundary') return [];
  const rings: readonly Ring[] = [...boundary.outlines, ...boundary.inner].filter(({ length }) => length > 2);
  if (isLoose(wishes))
    return rings.flatMap((ring) => lineGuides(ring, 'the boundary', (p) => distanceToRing(p, ring).point));
  if (inset <= 0) return [];
  const look = { because: `${parts.length(inset)} inside the boundary`, strength: 42, reach: 0.8 };
  const isInside = (p: SitePoint) =>
    boundary.outlines.some((ring) => ringContains(ring, p)) && !boundary.inner.some((ring) => ringContains(ring, p));
  return rings.map((ring) =>
    offsetGuide((p) => (isInside(p) ? distanceToRing(p, ring).point : undefined), inset, look),
  );
}
