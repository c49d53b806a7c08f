import { openSlot, type Slot } from '../../live/slot.ts';
import type { FirstEnd } from './drawn-hole.ts';
import type { PlaceChoice, placeChoices } from './seat-for.ts';

/** What is chosen beside the instrument; kept while the board is open. */
export interface DrawHoleOptions {
  readonly first: Slot<FirstEnd>;
  readonly place: Slot<PlaceChoice>;
  /** What the next press makes, where it may be either. */
  readonly next: Slot<'turn' | 'end'>;
  /** What a length typed alone is of. */
  readonly typedOf: Slot<'leg' | 'whole'>;
  /** The places there are to choose from. */
  readonly places: Slot<ReturnType<typeof placeChoices>>;
}

export function openDrawHoleOptions(): DrawHoleOptions {
  return {
    first: openSlot<FirstEnd>('tee'),
    place: openSlot<PlaceChoice>({ kind: 'next' }),
    next: openSlot<'turn' | 'end'>('turn'),
    typedOf: openSlot<'leg' | 'whole'>('leg'),
    places: openSlot<ReturnType<typeof placeChoices>>([]),
  };
}
