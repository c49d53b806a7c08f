import { distanceBetween, ringContains } from '@loopwright/geometry';
import { type Green, pointToMillimetre, type Ring } from '@loopwright/model';
import type { NoteBook } from '../note.ts';
import { distanceToNearest } from './direct-lines.ts';
import { ASSUMED_GREEN, greenShapeOf, measuredCentre } from './green-shape.ts';
import { endOf, type HoleInHand, nameOf, teeOf } from './hole-in-hand.ts';

/** A green farther than this from where its line ends is another hole's (m). */
const FARTHEST = 60;
/** The line's end is told to lie off the green's middle from this on (m). */
const OFF_THE_MIDDLE = 8;

export interface HoleWithGreen extends HoleInHand {
  readonly green: Green;
  /** Index of its mapped green; undefined for an assumed one. */
  readonly outline: number | undefined;
}

/**
 * Each hole with its green: the mapped one its line ends on, else the nearest free one within 60 m, else an assumed one
 * at the line's end.
 *
 * A mapped line that ends on its green keeps its end as the centre, so that the hole's length is the mapped line's. One
 * that ends beside its green is measured to the green's centre as a card does, and the line is led there, with a note.
 */
export function withGreens(
  holes: readonly HoleInHand[],
  greens: readonly Ring[],
  notes: NoteBook,
): readonly HoleWithGreen[] {
  const onGreen = holes.map((hole) => greens.findIndex((green) => ringContains(green, endOf(hole))));
  const taken = new Set(onGreen);
  return holes.map((hole, index) => {
    const under = onGreen[index] ?? -1;
    const green = greens[under];
    if (green) return endingOn(hole, green, under, notes);
    const nearest = nearestFree(hole, greens, taken);
    const outline = nearest === undefined ? undefined : greens[nearest];
    if (nearest === undefined || outline === undefined) return onAssumedGreen(hole, greens, notes);
    taken.add(nearest);
    return ledTo(hole, outline, nearest, notes);
  });
}

function nearestFree(hole: HoleInHand, greens: readonly Ring[], taken: ReadonlySet<number>): number | undefined {
  let best: { index: number; distance: number } | undefined;
  for (const [index, green] of greens.entries()) {
    if (taken.has(index)) continue;
    const distance = distanceToNearest(endOf(hole), [green]);
    if (distance <= FARTHEST && (best === undefined || distance < best.distance)) best = { index, distance };
  }
  return best?.index;
}

function endingOn(hole: HoleInHand, green: Ring, outline: number, notes: NoteBook): HoleWithGreen {
  const centre = endOf(hole);
  const off = distanceBetween(centre, measuredCentre(green, hole.line.at(-2) ?? teeOf(hole)));
  if (off > OFF_THE_MIDDLE)
    notes.add(
      `The line ends ${Math.round(off)} m from the middle of its green; the length is the mapped line's.`,
      nameOf(hole),
    );
  return { ...hole, green: { centre, ...greenShapeOf(green, centre) }, outline };
}

function ledTo(hole: HoleInHand, green: Ring, outline: number, notes: NoteBook): HoleWithGreen {
  const centre = pointToMillimetre(measuredCentre(green, hole.line.at(-2) ?? teeOf(hole)));
  const off = Math.round(distanceToNearest(endOf(hole), [green]));
  notes.add(`The line ends ${off} m off its green: led to the green's middle.`, nameOf(hole));
  const line = [...hole.line.slice(0, -1), centre];
  return { ...hole, line, green: { centre, ...greenShapeOf(green, centre) }, outline };
}

function onAssumedGreen(hole: HoleInHand, greens: readonly Ring[], notes: NoteBook): HoleWithGreen {
  const nearest = distanceToNearest(endOf(hole), greens);
  const seen = Number.isFinite(nearest) ? ` (the nearest is ${Math.round(nearest)} m off)` : '';
  const { length, width } = ASSUMED_GREEN;
  notes.add(
    `No green of its own is mapped at the line's end${seen}: a green of ${length} by ${width} m was assumed there.`,
    nameOf(hole),
  );
  return { ...hole, green: { centre: endOf(hole), ...ASSUMED_GREEN }, outline: undefined };
}
