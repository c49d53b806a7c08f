import {
  closestOnPolyline,
  closestOnSegment,
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

/** How a line lies to a feature. */
export interface LineToFeature extends Closest {
  /** Metres of the line that run inside the feature's area. */
  readonly over: number;
}

/** How near a line comes to a feature, and how much of it runs over it. Cost: legs × pieces. */
export function lineToFeature(feature: Feature, line: readonly SitePoint[]): LineToFeature | undefined {
  let best: Closest | undefined;
  eachPiece(feature, (c, d) => {
    eachLeg(line, (a, b) => {
      const apart = segmentsApart(a, b, c, d);
      if (!best || apart.distance < best.distance) best = apart;
    });
  });
  const start = line[0];
  if (!best || !start) return undefined;
  const over = metresOver(feature, line);
  return over > 0 ? { ...best, distance: 0, over } : { ...best, over };
}

function metresOver(feature: Feature, line: readonly SitePoint[]): number {
  if (feature.geometry.type !== 'area') return 0;
  const length = polylineLength(line);
  const cuts = [0, ...crossingsAlong(feature, line), length].sort((a, b) => a - b);
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
  return found;
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

/** The nearest place of a feature's outline, whether inside or out. */
export function nearestPiece(feature: Feature, place: SitePoint): Closest | undefined {
  let best: Closest | undefined;
  eachPiece(feature, (a, b) => {
    const near = closestOnSegment(place, a, b);
    if (!best || near.distance < best.distance) best = { distance: near.distance, first: place, second: near.point };
  });
  return best;
}
