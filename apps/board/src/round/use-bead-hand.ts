import type { HoleId, Routing } from '@loopwright/model';
import { useCallback, useRef, useState } from 'react';
import type { DoEdit, Preview, Selection } from '../board/parts.ts';
import { chosenHoles, holesInOrder } from '../tools/chosen-holes.ts';
import { type BeadPlace, editForSeveral, placeAmong, samePlace } from './bead-moves.ts';

/** Beads in the hand, by pointer or by keys, and where they would go if they were put down now. */
export interface Held {
  /** The one that was taken hold of. */
  readonly hole: HoleId;
  /** All of them, in playing order. */
  readonly holes: readonly HoleId[];
  readonly by: 'pointer' | 'keys';
  /** As it was at picking up: the drag in progress is not in it. */
  readonly routing: Routing;
  readonly place: BeadPlace;
  /** The bead to swap with instead of moving; of one bead only. */
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

function editOf({ routing, hole, holes, place, swapWith }: Held) {
  if (swapWith !== undefined) return { edit: 'swap places', routing: routing.id, hole, with: swapWith } as const;
  return editForSeveral(routing, holes, place);
}

interface BeadHandParts {
  readonly routing: Routing;
  readonly selection: Selection;
  readonly edit: DoEdit;
  readonly preview: Preview;
}

/** The bead alone, or all that are picked out when it is one of them, in playing order. */
function heldWith(routing: Routing, selection: Selection, hole: HoleId): readonly HoleId[] {
  const chosen = chosenHoles(routing, selection);
  return chosen.includes(hole) ? holesInOrder(routing).filter((each) => chosen.includes(each)) : [hole];
}

/** Picking up a bead, and with it the others picked out where it is one of them, moving it about with its consequences shown, and putting it down. */
export function useBeadHand({ routing, selection, edit, preview }: BeadHandParts): BeadHand {
  const hand = useRef<Held | undefined>(undefined);
  const [held, setHeld] = useState<Held | undefined>(undefined);
  const hold = useCallback((next: Held | undefined) => {
    hand.current = next;
    setHeld(next);
    return next;
  }, []);

  const pick = (hole: HoleId, by: Held['by']) => {
    const holes = heldWith(routing, selection, hole);
    const place = placeAmong(routing, hole, holes);
    return routing.locked || !place ? undefined : hold({ hole, holes, by, routing, place });
  };
  const moveTo = (place: BeadPlace, swapWith?: HoleId) => {
    const now = hand.current;
    if (!now || (samePlace(now.place, place) && now.swapWith === swapWith)) return;
    const { swapWith: _, ...kept } = now;
    const swaps = swapWith !== undefined && now.holes.length === 1;
    const next: Held = { ...kept, place, ...(swaps ? { swapWith } : {}) };
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
