import type { HoleId, LoopId } from '@loopwright/model';
import type { BeadPlace } from './bead-moves.ts';

/** Where a thing stood on the page when the drag began, in pixels down the page. */
export interface Slot {
  readonly of:
    | { readonly kind: 'base'; readonly loop: LoopId }
    | { readonly kind: 'bead'; readonly loop: LoopId; readonly hole: HoleId }
    | { readonly kind: 'tray' };
  readonly top: number;
  readonly bottom: number;
}

/**
 * The place under the pointer, by the slots as they stood at picking up: the string may slide meanwhile without
 * the place trembling. Over the upper half of a bead the place is before it, over the lower half after it.
 *
 * @param slots  top to bottom
 * @param held  the beads in the hand: their own slots say where they came from
 */
export function placeAt(slots: readonly Slot[], held: readonly HoleId[], y: number): BeadPlace | undefined {
  let place: BeadPlace | undefined;
  for (const slot of slots) {
    const middle = (slot.top + slot.bottom) / 2;
    if (slot.of.kind === 'tray') {
      if (y >= slot.top) return { in: 'tray' };
    } else if (slot.of.kind === 'base') {
      if (place === undefined || y >= middle) place = { in: 'loop', loop: slot.of.loop, after: 'first' };
    } else if (!held.includes(slot.of.hole) && y >= middle) {
      place = { in: 'loop', loop: slot.of.loop, after: slot.of.hole };
    }
  }
  return place;
}

/** The other bead under the pointer, for swapping. */
export function beadAt(slots: readonly Slot[], held: readonly HoleId[], y: number): HoleId | undefined {
  for (const { of, top, bottom } of slots) {
    if (of.kind === 'bead' && !held.includes(of.hole) && y >= top && y < bottom) return of.hole;
  }
  return undefined;
}
