import {
  type Box,
  type BoxIndex,
  boundsOf,
  boxIndex,
  closestOnPolyline,
  distanceBetween,
  distanceToRing,
  ringArea,
  ringContains,
} from '@loopwright/geometry';
import type { Boundary, Feature, FeatureGeometry, Ring, Site, SitePoint } from '@loopwright/model';
import type { SiteThing } from '../../board/parts.ts';
import { outerPoints } from '../../drawing/outer-points.ts';
import { type CentreOf, distanceToSketch } from '../hit-sketch.ts';
import type { LandGrip } from './land-grips.ts';
import { sameThing } from './outlines-of.ts';

/** Something on the land under the pointer: by its sign, on its line, or anywhere inside it. */
export interface ThingHit {
  readonly kind: 'thing';
  readonly thing: SiteThing;
  /** Where its sign stands, or where the pointer met it. */
  readonly at: SitePoint;
  readonly by: 'sign' | 'line' | 'inside';
}

export type LandHit = LandGrip | ThingHit;

/** What is asked of the land under a pointer, `reach` metres about it; the drawing asks between its own questions. */
export interface LandTargets {
  /** Of the thing picked out. */
  grip(at: SitePoint, reach: number): LandGrip | undefined;
  /** Marks, aprons and features that are a single place. */
  sign(at: SitePoint, reach: number): ThingHit | undefined;
  line(at: SitePoint, reach: number): ThingHit | undefined;
  /** The smallest area about the place; where that is picked out already, the next larger one, and after the last none. */
  inside(at: SitePoint): ThingHit | undefined;
}

export interface LandSource {
  readonly site: Site;
  readonly grips: readonly LandGrip[];
  readonly chosen: SiteThing | undefined;
  /** Where a clearance ring has its middle; without it only those about a place are hit. */
  readonly centreOf?: CentreOf;
}

/** Makes the land's targets; keeps an index of the features for as long as they are the same ones. */
export function openLandTargets(): (source: LandSource) => LandTargets {
  const boxes = new WeakMap<FeatureGeometry, Box>();
  const boxOf = (geometry: FeatureGeometry): Box => {
    const known = boxes.get(geometry) ?? boundsOf(outerPoints(geometry));
    boxes.set(geometry, known);
    return known;
  };
  let indexed: { readonly of: Site['features']; readonly index: BoxIndex } | undefined;
  /** Made only when something is asked: a drag makes new features in every picture, and asks nothing. */
  const featuresNear = ({ features }: Site, at: SitePoint, reach: number): readonly Feature[] => {
    if (indexed?.of !== features) {
      indexed = { of: features, index: boxIndex(features.map(({ geometry }) => boxOf(geometry))) };
    }
    const box = { minX: at.x - reach, minY: at.y - reach, maxX: at.x + reach, maxY: at.y + reach };
    return indexed.index.search(box).flatMap((place) => features[place] ?? []);
  };
  return ({ site, grips, chosen, centreOf = aboutPlaces }) => ({
    grip: (at, reach) => nearestOf(grips, (grip) => distanceBetween(at, grip.at), reach),
    sign: (at, reach) =>
      nearestOf(
        [...signsOf(site), ...featuresNear(site, at, reach).flatMap(placeOf)],
        (hit) => distanceBetween(at, hit.at),
        reach,
      ),
    line: (at, reach) => lineAt(site, featuresNear(site, at, reach), at, reach, centreOf),
    inside: (at) => insideAt(site, featuresNear(site, at, 0), at, chosen),
  });
}

function nearestOf<Target>(
  targets: readonly Target[],
  distanceOf: (target: Target) => number,
  reach: number,
): Target | undefined {
  let best: { readonly target: Target; readonly distance: number } | undefined;
  for (const target of targets) {
    const distance = distanceOf(target);
    if (distance <= reach && (!best || distance < best.distance)) best = { target, distance };
  }
  return best?.target;
}

const sign = (thing: SiteThing, at: SitePoint): ThingHit => ({ kind: 'thing', thing, at, by: 'sign' });

const signsOf = ({ marks, bases }: Site): readonly ThingHit[] => [
  ...marks.map(({ id, at }) => sign({ kind: 'mark', id }, at)),
  ...bases.map(({ id, apron }) => sign({ kind: 'base', id }, apron)),
];

const placeOf = ({ id, geometry }: Feature): readonly ThingHit[] =>
  geometry.type === 'point' ? [sign({ kind: 'feature', id }, geometry.at)] : [];

const aboutPlaces: CentreOf = (about) => ('at' in about ? about.at : undefined);

function lineAt(
  site: Site,
  features: readonly Feature[],
  at: SitePoint,
  reach: number,
  centreOf: CentreOf,
): ThingHit | undefined {
  const lines: readonly (readonly [SiteThing, number])[] = [
    ...(site.sketches ?? []).map(
      ({ id, shape }) => [{ kind: 'sketch', id }, distanceToSketch(shape, at, centreOf)] as const,
    ),
    ...features.map(({ id, geometry }) => [{ kind: 'feature', id }, toLine(geometry, at)] as const),
    ...site.bases.map(({ id, footprints }) => [{ kind: 'base', id }, toRings(footprints, at)] as const),
    ...(site.boundary ? [[{ kind: 'boundary' }, toRings(ringsOf(site.boundary), at)] as const] : []),
  ];
  const best = nearestOf(lines, ([, distance]) => distance, reach);
  return best && { kind: 'thing', thing: best[0], at, by: 'line' };
}

const ringsOf = ({ outlines, inner }: Boundary): readonly Ring[] => [...outlines, ...inner];

const toRings = (rings: readonly Ring[], at: SitePoint): number =>
  rings.reduce(
    (best, ring) => (ring.length > 0 ? Math.min(best, distanceToRing(at, ring).distance) : best),
    Number.POSITIVE_INFINITY,
  );

function toLine(geometry: FeatureGeometry, at: SitePoint): number {
  if (geometry.type === 'area') return toRings(geometry.rings, at);
  if (geometry.type === 'line' && geometry.points.length > 0) return closestOnPolyline(at, geometry.points).distance;
  return Number.POSITIVE_INFINITY;
}

function insideAt(
  site: Site,
  features: readonly Feature[],
  at: SitePoint,
  chosen: SiteThing | undefined,
): ThingHit | undefined {
  const about: { readonly thing: SiteThing; readonly size: number }[] = [];
  for (const { id, geometry } of features) {
    const size = geometry.type === 'area' ? sizeAbout(geometry.rings, at) : undefined;
    if (size !== undefined) about.push({ thing: { kind: 'feature', id }, size });
  }
  for (const { id, footprints } of site.bases) {
    const ring = footprints.find((footprint) => ringContains(footprint, at));
    if (ring) about.push({ thing: { kind: 'base', id }, size: Math.abs(ringArea(ring)) });
  }
  about.sort((one, other) => one.size - other.size);
  const now = about.findIndex(({ thing }) => sameThing(thing, chosen));
  const next = about[now + 1];
  return next && { kind: 'thing', thing: next.thing, at, by: 'inside' };
}

/** The size of an area about a place; `undefined` when the place is not in it, or in a hole of it. */
function sizeAbout([outer, ...cut]: readonly Ring[], at: SitePoint): number | undefined {
  if (!outer || !ringContains(outer, at) || cut.some((ring) => ringContains(ring, at))) return undefined;
  return Math.abs(ringArea(outer));
}
