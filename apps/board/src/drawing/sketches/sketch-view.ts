import { distanceBetween, pointBetween, polylineLength, ringArea, ringCentroid } from '@loopwright/geometry';
import type { LengthUnit, Ring, SitePoint, Sketch, SketchId, SketchShape } from '@loopwright/model';
import { initialsOf, inkOf } from '../../board/people-inks.ts';
import { areaWords } from '../../reading/areas.ts';
import { lengthWords } from '../../reading/lengths.ts';
import { legSum, legsOf } from '../../reading/sketch-words.ts';
import { toSheetLine } from '../site-transform.ts';

/** Words of a sketch on the drawing. */
export interface SketchWords {
  readonly at: SitePoint;
  readonly text: string;
  /** Metres on the ground that they stand for: they are left out where that is too little to write on. */
  readonly room: number;
}

/** A sketch as the drawing shows it, in sheet units; made once for as long as it stays as it is. */
export interface SketchView {
  readonly id: SketchId;
  readonly kind: SketchShape['kind'];
  readonly line: readonly number[];
  readonly ring?: { readonly at: SitePoint; readonly radius: number };
  readonly words: readonly SketchWords[];
  readonly colour: string;
  /** Stays when others are wiped: drawn solid. */
  readonly kept: boolean;
  /** Who drew it, beside one that is not kept. */
  readonly by: { readonly at: SitePoint; readonly initials: string };
}

/**
 * What the drawing shows of a sketch.
 *
 * @param centre  of a ring, where it is now; without it a ring is not drawn
 */
export function toSketchView(sketch: Sketch, units: LengthUnit, centre: SitePoint | undefined): SketchView | undefined {
  const { shape, id, ink, kept, by } = sketch;
  const view = (line: readonly SitePoint[], at: SitePoint | undefined, words: readonly SketchWords[]) =>
    at && {
      id,
      kind: shape.kind,
      line: toSheetLine(line),
      words,
      colour: inkOf(ink).colour,
      kept,
      by: { at, initials: initialsOf(by) },
    };
  switch (shape.kind) {
    case 'ring': {
      if (!centre) return undefined;
      const { radius } = shape;
      // Small rings are read too: the words stand above them, not within.
      const top = { x: centre.x, y: centre.y + radius };
      const shown = view([], top, [{ at: top, text: lengthWords(radius, units), room: 8 * radius }]);
      return shown && { ...shown, ring: { at: centre, radius } };
    }
    case 'measured area':
      return view(shape.ring, shape.ring[0], areaLabel(shape.ring, units));
    case 'stroke':
      return view(shape.points, shape.points[0], []);
    case 'measured line':
    case 'rod':
      return view(shape.points, shape.points[0], lineLabels(shape.points, units));
  }
}

function areaLabel(ring: Ring, units: LengthUnit): readonly SketchWords[] {
  const area = Math.abs(ringArea(ring));
  return ring.length > 2 ? [{ at: ringCentroid(ring), text: areaWords(area, units), room: 2 * Math.sqrt(area) }] : [];
}

/** Each leg at its middle, and of several what they come to at the end. */
function lineLabels(points: readonly SitePoint[], units: LengthUnit): readonly SketchWords[] {
  const legs = points.slice(1).map((to, index) => {
    const from = points[index] ?? to;
    const room = distanceBetween(from, to);
    return { at: pointBetween(from, to, 0.5), text: lengthWords(room, units), room };
  });
  const end = points.at(-1);
  if (legs.length < 2 || !end) return legs;
  const sum = legs.length < 5 ? legSum(legsOf(points), units) : `${lengthWords(polylineLength(points), units)} in all`;
  return [...legs, { at: end, text: sum, room: polylineLength(points) }];
}
