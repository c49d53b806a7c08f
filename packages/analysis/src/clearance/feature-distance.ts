import {
  closestOnPolyline,
  crossingShares,
  distanceBetween,
  distanceToRing,
  eachEdge,
  pointAlong,
  polylineLength,
  ringContains,
  segmentsApart,
} from '@loopwright/geometry';
import type { Feature, SitePoint } from '@loopwright/model';
import type { Closest } from './closest.ts';

/** Whether a place lies in a feature's area. Lines and points have none. */
export function featureContains({ geometry }: Feature, place: SitePoint): boolean {
  if (geometry.type !== 'area') return false;
  // Even-odd over all rings: an inner ring takes its part out again.
  return geometry.rings.filter((ring) => ringContains(ring, place)).length % 2 === 1;
}

/** How far a place is from a feature; below 0, by how far it lies inside. `second` is the nearest place of the feature. */
export function distanceToFeature(feature: Feature, place: SitePoint): Closest {
  const { geometry } = feature;
  if (geometry.type === 'point') {
    return { distance: distanceBetween(place, geometry.at), first: place, second: geometry.at };
  }
  if (geometry.type === 'line') {
    const { distance, point } = closestOnPolyline(place, geometry.points);
    return { distance, first: place, second: point };
  }
  let best: Closest = { distance: Number.POSITIVE_INFINITY, first: place, second: place };
  for (const ring of geometry.rings) {
    if (ring.length === 0) continue;
    const { distance, point } = distanceToRing(place, ring);
    if (distance < best.distance) best = { distance, first: place, second: point };
  }
  return featureContains(feature, place) ? { ...best, distance: -best.distance } : best;
}

/** Visits the straight pieces of a feature; a point is a piece of no length. */
export function eachPiece({ geometry }: Feature, visit: (a: SitePoint, b: SitePoint) => void): void {
  if (geometry.type === 'point') visit(geometry.at, geometry.at);
  else if (geometry.type === 'area') for (const ring of geometry.rings) eachEdge(ring, visit);
  else {
    geometry.points.forEach((b, i) => {
      const a = geometry.points[i - 1];
      if (a) visit(a, b);
    });
  }
}

/**
 * Where a line runs over a feature: below 0, the metres of it inside an area; 0 where it crosses a line.
 * `undefined` where it does not. Cost: legs × pieces, no more than a few products each.
 */
export function lineOverFeature(feature: Feature, line: readonly SitePoint[]): Closest | undefined {
  const crossings = crossingsAlong(feature, line);
  const over = metresOver(feature, line, crossings);
  const crossing = crossings[0];
  if (over === 0 && (crossing === undefined || feature.geometry.type === 'area')) return undefined;
  const at = pointAlong(line, crossing ?? 0);
  return { distance: over === 0 ? 0 : -over, first: at, second: at };
}

/** How near a line comes to a feature. Cost: legs × pieces. */
export function lineBesideFeature(feature: Feature, line: readonly SitePoint[]): Closest | undefined {
  let best: Closest | undefined;
  eachPiece(feature, (c, d) => {
    eachLeg(line, (a, b) => {
      const apart = segmentsApart(a, b, c, d);
      if (!best || apart.distance < best.distance) best = apart;
    });
  });
  return best;
}

function metresOver(feature: Feature, line: readonly SitePoint[], crossings: readonly number[]): number {
  if (feature.geometry.type !== 'area') return 0;
  const length = polylineLength(line);
  const cuts = [0, ...crossings, length];
  let over = 0;
  cuts.forEach((to, i) => {
    const from = cuts[i - 1];
    if (from === undefined || to <= from) return;
    if (featureContains(feature, pointAlong(line, (from + to) / 2))) over += to - from;
  });
  return over;
}

function crossingsAlong(feature: Feature, line: readonly SitePoint[]): readonly number[] {
  const found: number[] = [];
  eachLeg(line, (a, b, before) => {
    eachPiece(feature, (c, d) => {
      const shares = crossingShares(a, b, c, d);
      if (shares) found.push(before + shares.first * distanceBetween(a, b));
    });
  });
  return found.sort((a, b) => a - b);
}

function eachLeg(line: readonly SitePoint[], visit: (a: SitePoint, b: SitePoint, before: number) => void): void {
  let before = 0;
  for (let i = 1; i < line.length; i++) {
    const a = line[i - 1];
    const b = line[i];
    if (!a || !b) continue;
    visit(a, b, before);
    before += distanceBetween(a, b);
  }
}
