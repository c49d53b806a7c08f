import type { NamedEdit } from '@loopwright/document';
import type { HoleId, PartId, SitePoint } from '@loopwright/model';
import { holeOf } from '@loopwright/model';
import { type Gesture, type Hand, hasTravelled, type PointerAt } from './tool.ts';

/** What is moved, and what the move is called for a way on the ground. */
export interface Moving {
  readonly hole: HoleId;
  /** Parts that must not be pinned. */
  readonly parts: readonly PartId[];
  editFor(way: SitePoint): NamedEdit;
  /** What a press without a drag means. */
  click(): void;
}

/**
 * A press that drags something over the ground: it starts after a little slack, keeps the offset of the grip, and
 * makes one edit at the end. A pinned part and a locked routing stay and are spoken about instead.
 */
export function dragGesture(moving: Moving, start: PointerAt, hand: Hand): Gesture {
  let state: 'pressed' | 'dragging' | 'over' = 'pressed';
  const begin = () => {
    const pinned = holeOf(hand.routing, moving.hole)?.pinned ?? [];
    const held = moving.parts.filter((part) => pinned.includes(part));
    state = hand.routing.locked || held.length > 0 ? 'over' : 'dragging';
    if (hand.routing.locked) hand.sayLocked();
    else if (held.length > 0) hand.askAboutPin(moving.hole, held);
    else hand.select({ hole: moving.hole });
  };
  return {
    cursor: 'grabbing',
    move: (at) => {
      if (state === 'pressed' && hasTravelled(start, at)) begin();
      if (state !== 'dragging') return;
      hand.drag(moving.editFor({ x: at.site.x - start.site.x, y: at.site.y - start.site.y }));
    },
    end: () => {
      if (state === 'pressed') moving.click();
      if (state === 'dragging') hand.drop();
      state = 'over';
    },
    cancel: () => {
      if (state === 'dragging') hand.letGo();
      state = 'over';
    },
  };
}
