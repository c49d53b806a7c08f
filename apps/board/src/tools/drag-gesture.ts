import type { NamedEdit } from '@loopwright/document';
import type { SitePoint } from '@loopwright/model';
import type { Selection } from '../board/parts.ts';
import { pinnedAmong } from './pinned-among.ts';
import { refusalOf } from './refusal.ts';
import { type Gesture, type Hand, type HeldParts, hasTravelled, type PointerAt } from './tool.ts';

/** What is moved, and what the move is called for a way on the ground. */
export interface Moving {
  /** Parts that must not be pinned, by hole. */
  readonly holds: readonly HeldParts[];
  /** What lies on the site moves on a locked routing too. */
  readonly of?: 'site';
  /** Picked out as the drag begins; what is picked out stays so when absent. */
  readonly selects?: Selection;
  /** `undefined` while the way makes no difference: what was shown is put back. */
  editFor(way: SitePoint, now: PointerAt): NamedEdit | undefined;
  /** Why it is put back at the drop, in words; `undefined` when it stands. */
  refused?(edit: NamedEdit): string | undefined;
  /** After it was written. */
  dropped?(edit: NamedEdit): void;
  /** What a press without a drag means. */
  click(at: PointerAt): void;
}

/**
 * A press that drags something over the ground: it starts after a little slack, keeps the offset of the grip, and
 * makes one edit at the end. A pinned part and a locked routing stay and are spoken about instead.
 */
export function dragGesture(moving: Moving, start: PointerAt, hand: Hand): Gesture {
  let state: 'pressed' | 'dragging' | 'over' = 'pressed';
  let shown: NamedEdit | undefined;
  const begin = () => {
    const [first, ...further] = pinnedAmong(hand.routing, moving.holds);
    const isLocked = hand.routing.locked && moving.of !== 'site';
    state = isLocked || first ? 'over' : 'dragging';
    if (isLocked) hand.sayLocked();
    else if (first) hand.askAboutPin(first.hole, first.parts, further);
    else if (moving.selects) hand.select(moving.selects);
  };
  const drop = () => {
    const refused = shown && (refusalOf(hand.routing, shown) ?? moving.refused?.(shown));
    if (shown && refused === undefined) {
      hand.drop();
      return moving.dropped?.(shown);
    }
    hand.letGo();
    if (refused !== undefined) hand.say(refused);
    return undefined;
  };
  return {
    cursor: 'grabbing',
    move: (at) => {
      if (state === 'pressed' && hasTravelled(start, at)) begin();
      if (state !== 'dragging') return;
      const next = moving.editFor({ x: at.site.x - start.site.x, y: at.site.y - start.site.y }, at);
      if (next) hand.drag(next);
      else if (shown) hand.letGo();
      shown = next;
    },
    end: (at) => {
      if (state === 'pressed') moving.click(at);
      if (state === 'dragging') drop();
      state = 'over';
    },
    cancel: () => {
      if (state === 'dragging') hand.letGo();
      state = 'over';
    },
  };
}
