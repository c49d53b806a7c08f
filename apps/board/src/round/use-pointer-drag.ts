import type { HoleId } from '@loopwright/model';
import { type PointerEvent, type RefObject, useRef } from 'react';
import { beadAt, placeAt, type Slot } from './drop-place.ts';
import type { BeadHand } from './use-bead-hand.ts';

/** How far a pointer goes before a press becomes a drag, in pixels. */
const DRAG_STARTS_AT = 4;

interface Press {
  readonly hole: HoleId;
  readonly pointer: number;
  readonly x: number;
  readonly y: number;
  holes: readonly HoleId[];
  slots?: readonly Slot[];
}

/** Where base beads, beads and tray stand now; each names itself in its `data-slot`. */
function slotsIn(string: HTMLElement): readonly Slot[] {
  return [...string.querySelectorAll<HTMLElement>('[data-slot]')].flatMap((element): readonly Slot[] => {
    const { slot, loop = '', hole = '' } = element.dataset;
    const { top, bottom } = element.getBoundingClientRect();
    if (slot === 'base') return [{ of: { kind: 'base', loop }, top, bottom }];
    if (slot === 'bead') return [{ of: { kind: 'bead', loop, hole }, top, bottom }];
    return slot === 'tray' ? [{ of: { kind: 'tray' }, top, bottom }] : [];
  });
}

/**
 * Dragging beads with mouse, pen or finger. The string itself captures the pointer, since beads change places under it.
 * With Alt held the bead swaps with the one under the pointer.
 */
export function usePointerDrag(
  string: RefObject<HTMLElement | null>,
  ghost: RefObject<HTMLElement | null>,
  hand: BeadHand,
) {
  const press = useRef<Press | undefined>(undefined);
  const wasDragged = useRef(false);

  const onPress = (event: PointerEvent, hole: HoleId) => {
    wasDragged.current = false;
    if (event.button !== 0) return;
    press.current = { hole, holes: [hole], pointer: event.pointerId, x: event.clientX, y: event.clientY };
  };
  const onPointerMove = (event: PointerEvent) => {
    const now = press.current;
    if (!now || now.pointer !== event.pointerId || !string.current) return;
    if (!now.slots) {
      if (Math.abs(event.clientX - now.x) + Math.abs(event.clientY - now.y) < DRAG_STARTS_AT) return;
      const held = hand.pick(now.hole, 'pointer');
      if (!held) return;
      now.holes = held.holes;
      now.slots = slotsIn(string.current);
      wasDragged.current = true;
      string.current.setPointerCapture(event.pointerId);
    }
    if (ghost.current) ghost.current.style.transform = `translate(${event.clientX}px, ${event.clientY}px)`;
    const place = placeAt(now.slots, now.holes, event.clientY);
    if (place) hand.moveTo(place, event.altKey ? beadAt(now.slots, now.holes, event.clientY) : undefined);
  };
  const end = (finish: () => void) => (event: PointerEvent) => {
    if (press.current?.pointer !== event.pointerId) return;
    const dragged = press.current.slots !== undefined;
    press.current = undefined;
    if (dragged) finish();
  };
  return {
    onPress,
    /** A press that became a drag is no click. */
    wasDragged: () => wasDragged.current,
    onString: { onPointerMove, onPointerUp: end(hand.drop), onPointerCancel: end(hand.leave) },
  };
}
