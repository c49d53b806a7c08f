import { distanceToRing, ringContains } from '@loopwright/geometry';
import type { Ring, SitePoint } from '@loopwright/model';
import type { NoteBook } from '../note.ts';
import { endOf, type HoleInHand, nameOf, teeOf } from './hole-in-hand.ts';

/** Metres from a place to the nearest of some areas: 0 inside one, infinite when there are none. */
export function distanceToNearest(at: SitePoint, areas: readonly Ring[]): number {
  let nearest = Number.POSITIVE_INFINITY;
  for (const area of areas) {
    if (ringContains(area, at)) return 0;
    nearest = Math.min(nearest, distanceToRing(at, area).distance);
  }
  return nearest;
}

/** A line starts on its tee when it starts within this of one (m). */
const AT_A_TEE = 40;
/** Only a line that starts within this of a green can have been drawn from there (m). */
const AT_A_GREEN = 60;
/** Without tees on the map: how much nearer to a green a line must start than end to be turned round (m). */
const CLEARLY_NEARER = 30;

/**
 * Each line from tee to green: one that starts nearer to a green and ends nearer to a tee was drawn the other way and is
 * turned round, with a note.
 */
export function directed(
  holes: readonly HoleInHand[],
  areas: { readonly tees: readonly Ring[]; readonly greens: readonly Ring[] },
  notes: NoteBook,
): readonly HoleInHand[] {
  return holes.map((hole) => {
    const [start, end] = [teeOf(hole), endOf(hole)];
    const greens = { atStart: distanceToNearest(start, areas.greens), atEnd: distanceToNearest(end, areas.greens) };
    const tees = { atStart: distanceToNearest(start, areas.tees), atEnd: distanceToNearest(end, areas.tees) };
    const looksBackwards =
      areas.tees.length === 0
        ? greens.atStart + CLEARLY_NEARER < greens.atEnd
        : greens.atStart < greens.atEnd && tees.atEnd < tees.atStart;
    if (looksBackwards && greens.atStart <= AT_A_GREEN) {
      notes.add('The line was drawn from green to tee: turned round.', nameOf(hole));
      return { ...hole, line: hole.line.toReversed() };
    }
    if (areas.tees.length > 0 && tees.atStart > AT_A_TEE)
      notes.add(`No tee is mapped within ${AT_A_TEE} m of where the line starts: its start is the tee.`, nameOf(hole));
    return hole;
  });
}
