import { openSlot, type Slot } from '../../live/slot.ts';
import type { PinnedEnd } from './rod.ts';
import { FIRST_LEGS } from './rod-legs.ts';

/** What is chosen beside the rod; kept while the board is open. */
export interface RodChoice {
  /** Metres, from the tee. */
  readonly legs: Slot<readonly number[]>;
  readonly end: Slot<PinnedEnd>;
}

export function openRodChoice(): RodChoice {
  return { legs: openSlot(FIRST_LEGS), end: openSlot<PinnedEnd>('tee') };
}
