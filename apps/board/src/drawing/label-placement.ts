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

/**
 * Chooses a place for each label so that none covers one listed before it: hole numbers first, then signs, then names.
 *
 * Greedy and stable: a label moves only when something before it took its place. O(n × places), each against what lies
 * near it: done in every picture of a drag.
 */
export function placeLabels(labels: readonly Label[]): ReadonlyMap<string, CanvasPoint> {
  const placed = new Map<string, CanvasPoint>();
  const taken = openTakenGround();
  for (const label of labels) {
    const free = label.places.find((at) => taken.coveredBy(boxAt(label, at), 1) === 0);
    const at = free ?? (label.when === 'always' ? leastCovering(label, taken) : undefined);
    if (!at) continue;
    placed.set(label.id, at);
    taken.take(boxAt(label, at));
  }
  return placed;
}

/** The ground that is taken, by squares, so that a box is compared with its neighbours alone. */
interface TakenGround {
  take(box: Taken): void;
  /** How many of the boxes taken this one covers; stops counting at so many. */
  coveredBy(box: Taken, enough: number): number;
}

/** Pixels: about the size of what is placed, so that most boxes lie in four squares at most. */
const SQUARE = 48;
/** Squares across and down together from which on a box is large. */
const LARGE = 12;

function openTakenGround(): TakenGround {
  const rows = new Map<number, Map<number, Taken[]>>();
  // Seen from near by a green fills the window: it is compared with everything instead of lying in a thousand squares.
  const large: Taken[] = [];
  const span = (from: number, to: number): readonly [number, number] => [
    Math.floor(from / SQUARE),
    Math.floor(to / SQUARE),
  ];
  return {
    take(box) {
      const [[left, right], [top, bottom]] = [span(box.left, box.right), span(box.top, box.bottom)];
      if (right - left + bottom - top > LARGE) {
        large.push(box);
        return;
      }
      for (let y = top; y <= bottom; y++) {
        const row = rows.get(y) ?? new Map<number, Taken[]>();
        rows.set(y, row);
        for (let x = left; x <= right; x++) {
          const square = row.get(x);
          if (square) square.push(box);
          else row.set(x, [box]);
        }
      }
    },
    coveredBy(box, enough) {
      const [[left, right], [top, bottom]] = [span(box.left, box.right), span(box.top, box.bottom)];
      // A neighbour in several squares counts in the first that both lie in.
      const firstX = (other: Taken) => Math.max(left, Math.floor(other.left / SQUARE));
      const firstY = (other: Taken) => Math.max(top, Math.floor(other.top / SQUARE));
      let covers = large.filter((other) => overlap(other, box)).length;
      if (covers >= enough) return covers;
      for (let y = top; y <= bottom; y++) {
        const row = rows.get(y);
        if (!row) continue;
        for (let x = left; x <= right; x++) {
          for (const other of row.get(x) ?? []) {
            if (!overlap(other, box) || firstX(other) !== x || firstY(other) !== y) continue;
            covers += 1;
            if (covers >= enough) return covers;
          }
        }
      }
      return covers;
    },
  };
}

function leastCovering(label: Label, taken: TakenGround): CanvasPoint | undefined {
  let best: { readonly at: CanvasPoint; readonly covers: number } | undefined;
  for (const at of label.places) {
    const covers = taken.coveredBy(boxAt(label, at), best?.covers ?? Number.POSITIVE_INFINITY);
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
