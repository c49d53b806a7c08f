import type { Hole } from './hole.ts';
import type { HoleId, LoopId } from './ids.ts';

/** Holes by the keys of their seats, ties by id: the same order on every machine. */
function bySeat(a: Hole, b: Hole): number {
  if (a.seat.key !== b.seat.key) return a.seat.key < b.seat.key ? -1 : 1;
  return a.id < b.id ? -1 : 1;
}

/** The holes of a loop in playing order, from where each hole says it sits. */
export function holesSeatedIn(holes: readonly Hole[], loop: LoopId): readonly HoleId[] {
  return holes
    .filter(({ seat }) => seat.in === 'loop' && seat.loop === loop)
    .sort(bySeat)
    .map(({ id }) => id);
}

/** The spare holes in the order of the tray. */
export function spareHoles(holes: readonly Hole[]): readonly HoleId[] {
  return holes
    .filter(({ seat }) => seat.in === 'spare')
    .sort(bySeat)
    .map(({ id }) => id);
}
