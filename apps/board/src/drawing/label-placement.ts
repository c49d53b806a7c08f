import type { CanvasPoint } from '@loopwright/model';

/** Something to be written on the drawing, in pixels: a box about one of the places it may stand at. */
export interface Label {
  readonly id: string;
  /** Best first. */
  readonly places: readonly CanvasPoint[];
  readonly halfWidth: number;
  readonly halfHeight: number;
  /** `always` stands where it covers fewest even where all places are taken; `if there is room` is left out then. */
  readonly when: 'always' | 'if there is room';
}

interface Taken {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

function boxAt(label: Label, at: CanvasPoint): Taken {
  return {
    left: at.x - label.halfWidth,
    right: at.x + label.halfWidth,
    top: at.y - label.halfHeight,
    bottom: at.y + label.halfHeight,
  };
}

const overlap = (a: Taken, b: Taken): boolean =>
  a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;

function isFree(box: Taken, taken: readonly Taken[]): boolean {
  for (const other of taken) if (overlap(other, box)) return false;
  return true;
}

/**
 * Chooses a place for each label so that none covers one listed before it: hole numbers first, then signs, then names.
 *
 * Greedy and stable: a label moves only when something before it took its place. O(n²) boxes, a few dozen of them.
 */
export function placeLabels(labels: readonly Label[]): ReadonlyMap<string, CanvasPoint> {
  const placed = new Map<string, CanvasPoint>();
  const taken: Taken[] = [];
  for (const label of labels) {
    const free = label.places.find((at) => isFree(boxAt(label, at), taken));
    const at = free ?? (label.when === 'always' ? leastCovering(label, taken) : undefined);
    if (!at) continue;
    placed.set(label.id, at);
    taken.push(boxAt(label, at));
  }
  return placed;
}

function leastCovering(label: Label, taken: readonly Taken[]): CanvasPoint | undefined {
  let best: { readonly at: CanvasPoint; readonly covers: number } | undefined;
  for (const at of label.places) {
    const box = boxAt(label, at);
    const covers = taken.filter((other) => overlap(other, box)).length;
    if (!best || covers < best.covers) best = { at, covers };
  }
  return best?.at;
}

/** Places around a point at a distance in pixels, the point itself first. */
export function placesAround(at: CanvasPoint, distance: number): readonly CanvasPoint[] {
  const far = distance * Math.SQRT1_2;
  return [
    at,
    { x: at.x + distance, y: at.y },
    { x: at.x - distance, y: at.y },
    { x: at.x, y: at.y - distance },
    { x: at.x, y: at.y + distance },
    { x: at.x + far, y: at.y - far },
    { x: at.x - far, y: at.y - far },
    { x: at.x + far, y: at.y + far },
    { x: at.x - far, y: at.y + far },
  ];
}
