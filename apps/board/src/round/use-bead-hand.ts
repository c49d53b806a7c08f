import type { HoleId, Routing } from '@loopwright/model';
import { useCallback, useRef, useState } from 'react';
import type { DoEdit, Preview } from '../board/parts.ts';
import { type BeadPlace, editFor, placeOf, samePlace } from './bead-moves.ts';

/** A bead in the hand, by pointer or by keys, and where it would go if it were put down now. */
export interface Held {
  readonly hole: HoleId;
  readonly by: 'pointer' | 'keys';
  /** As it was at picking up: the drag in progress is not in it. */
  readonly routing: Routing;
  readonly place: BeadPlace;
  /** The bead to swap with instead of moving. */
  readonly swapWith?: HoleId;
}

export interface BeadHand {
  readonly held: Held | undefined;
  readonly pick: (hole: HoleId, by: Held['by']) => Held | undefined;
  /** Shows everybody what putting it down here would do. */
  readonly moveTo: (place: BeadPlace, swapWith?: HoleId) => void;
  /** One edit, one undo step. Gives back what was put down where. */
  readonly drop: () => Held | undefined;
  readonly leave: () => Held | undefined;
}

function editOf({ routing, hole, place, swapWith }: Held) {
  if (swapWith !== undefined) return { edit: 'swap places', routing: routing.id, hole, with: swapWith } as const;
  return editFor(routing, hole, place);
}

/** Picking up a bead, moving it about with its consequences shown, and putting it down. */
export function useBeadHand(routing: Routing, edit: DoEdit, preview: Preview): BeadHand {
  const hand = useRef<Held | undefined>(undefined);
  const [held, setHeld] = useState<Held | undefined>(undefined);
  const hold = useCallback((next: Held | undefined) => {
    hand.current = next;
    setHeld(next);
    return next;
  }, []);

  const pick = (hole: HoleId, by: Held['by']) => {
    const place = placeOf(routing, hole);
    return routing.locked || !place ? undefined : hold({ hole, by, routing, place });
  };
  const moveTo = (place: BeadPlace, swapWith?: HoleId) => {
    const now = hand.current;
    if (!now || (samePlace(now.place, place) && now.swapWith === swapWith)) return;
    const { swapWith: _, ...kept } = now;
    const next: Held = { ...kept, place, ...(swapWith === undefined ? {} : { swapWith }) };
    hold(next);
    preview(editOf(next));
  };
  const drop = () => {
    const now = hand.current;
    if (!now) return undefined;
    const step = editOf(now);
    if (step) edit(step);
    preview(undefined);
    hold(undefined);
    return now;
  };
  const leave = () => {
    const now = hand.current;
    if (now) preview(undefined);
    hold(undefined);
    return now;
  };
  return { held, pick, moveTo, drop, leave };
}
