import { closestOnPolyline, distanceBetween, distanceToRing } from '@loopwright/geometry';
import type { RingCentre, SitePoint, Sketch, SketchShape } from '@loopwright/model';

/** Where a clearance ring has its middle now; `undefined` when it is not on this drawing. */
export type CentreOf = (about: RingCentre) => SitePoint | undefined;

/** How far a place is from the line of a sketch, in metres; infinite for one that is not on this drawing. */
export function distanceToSketch(shape: SketchShape, at: SitePoint, centreOf: CentreOf): number {
  switch (shape.kind) {
    case 'stroke':
    case 'measured line':
    case 'rod':
      return shape.points.length > 0 ? closestOnPolyline(at, shape.points).distance : Number.POSITIVE_INFINITY;
    case 'measured area':
      return shape.ring.length > 0 ? distanceToRing(at, shape.ring).distance : Number.POSITIVE_INFINITY;
    case 'ring': {
      const centre = centreOf(shape.about);
      return centre ? Math.abs(distanceBetween(at, centre) - shape.radius) : Number.POSITIVE_INFINITY;
    }
  }
}

/** The sketch under a place: the nearest line within reach, the one drawn last of equally near ones. */
export function sketchAt(
  sketches: readonly Sketch[],
  at: SitePoint,
  reach: number,
  centreOf: CentreOf,
): Sketch | undefined {
  let best: { readonly sketch: Sketch; readonly distance: number } | undefined;
  for (const sketch of sketches) {
    const distance = distanceToSketch(sketch.shape, at, centreOf);
    if (distance <= reach && (!best || distance <= best.distance)) best = { sketch, distance };
  }
  return best?.sketch;
}
