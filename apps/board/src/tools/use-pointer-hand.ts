import type { CanvasPoint, HoleId, PartId, SitePoint } from '@loopwright/model';
import { type MouseEvent, type PointerEvent, useEffect, useMemo, useRef } from 'react';
import type { Viewpoint } from '../drawing/viewpoint.ts';
import type { PointerWork } from '../instruments/pointer-work.ts';
import type { Hit } from './hit.ts';
import { openLongPress } from './long-press.ts';
import { pan } from './pan.ts';
import { pickHole } from './pick-hole.ts';
import { pinchBetween } from './pinch.ts';
import { openPointerPlaces, type PlacesParts } from './pointer-places.ts';
import { takeOutAt } from './take-out-at.ts';
import type { Gesture, Hand, PointerAt } from './tool.ts';
import { beginGesture } from './tools.ts';

export interface PointerHandParts extends PlacesParts {
  readonly hand: Hand;
  /** What pointers do while an instrument is held; absent until there are any. */
  readonly instrument: PointerWork | undefined;
  /** Where the pointer is on the ground, for the others; `undefined` when it has left. */
  readonly onPoint: (at: SitePoint | undefined) => void;
  readonly onHover: (hit: Hit | undefined) => void;
  readonly onPlace: (at: CanvasPoint) => void;
  /** Whether it is being asked which hole is meant: a press answers, and moves nothing. */
  readonly picks: () => boolean;
  /** The menu was asked for: a place on the window, and the hole there; neither when a key asked. */
  readonly onMenu: (at: CanvasPoint | undefined, under?: { readonly hole: HoleId; readonly part?: PartId }) => void;
}

/** Turns pointers over the drawing into gestures: one finger or mouse takes hold, two fingers pan and zoom. */
export function usePointerHand(parts: PointerHandParts) {
  const newest = useRef(parts);
  newest.current = parts;
  const hand = useMemo(() => openPointerHand(() => newest.current), []);
  const { surface } = parts;
  useEffect(() => {
    const element = surface.current;
    if (!element) return undefined;
    // Not as a React handler: those are passive for the wheel, and the page would zoom along.
    element.addEventListener('wheel', hand.wheel, { passive: false });
    return () => element.removeEventListener('wheel', hand.wheel);
  }, [surface, hand]);
  return hand;
}

function openPointerHand(parts: () => PointerHandParts) {
  const fingers = new Map<number, CanvasPoint>();
  let gesture: { readonly pointer: number; readonly does: Gesture } | undefined;

  const { placeOf, pointerAt, hitUnder, hitUnderMouse } = openPointerPlaces(parts);
  const cancel = () => {
    gesture?.does.cancel();
    gesture = undefined;
  };
  const pinch = (event: PointerEvent) => {
    const before = [...fingers.values()];
    fingers.set(event.pointerId, placeOf(event));
    pinchOf(parts().viewpoint, before, [...fingers.values()]);
  };
  const menuAt = (event: { readonly clientX: number; readonly clientY: number }, hit: Hit | undefined) => {
    cancel();
    if (hit && 'hole' in hit) parts().onMenu({ x: event.clientX, y: event.clientY }, holeUnder(hit));
    else parts().onMenu({ x: event.clientX, y: event.clientY });
  };
  const longPress = openLongPress((work, milliseconds) => {
    const timer = setTimeout(work, milliseconds);
    return () => clearTimeout(timer);
  });
  const hover = (at: PointerAt) => {
    const { instrument, onHover } = parts();
    if (!instrument?.isHeld()) return onHover(hitUnder(at));
    onHover(undefined);
    return instrument.hover(at);
  };

  return {
    cancel,
    hitUnder,
    isHolding: () => gesture !== undefined,
    onPointerDown: (event: PointerEvent) => {
      const at = pointerAt(event);
      if (at.kind === 'touch') fingers.set(event.pointerId, at.canvas);
      longPress.end();
      if (fingers.size > 1) return cancel();
      if (gesture) return;
      if (at.kind === 'touch' && !parts().instrument?.isHeld()) {
        const place = { clientX: event.clientX, clientY: event.clientY };
        longPress.begin(at, () => menuAt(place, hitUnder(at)));
      }
      const does = begin(parts(), event, at, () => hitUnder(at));
      if (!does) return;
      gesture = { pointer: event.pointerId, does };
      parts().surface.current?.setPointerCapture(event.pointerId);
    },
    onPointerMove: (event: PointerEvent) => {
      if (fingers.size > 1) return pinch(event);
      const at = pointerAt(event);
      longPress.move(at);
      parts().onPlace(at.canvas);
      parts().onPoint(at.site);
      if (gesture?.pointer === event.pointerId) gesture.does.move(at);
      else if (at.kind !== 'touch') hover(at);
    },
    onPointerUp: (event: PointerEvent) => {
      fingers.delete(event.pointerId);
      longPress.end();
      if (gesture?.pointer !== event.pointerId) return;
      const { does } = gesture;
      gesture = undefined;
      does.end(pointerAt(event));
    },
    /** Taken away by the browser or the system: nothing was decided. */
    onPointerCancel: (event: PointerEvent) => {
      fingers.delete(event.pointerId);
      longPress.end();
      if (gesture?.pointer === event.pointerId) cancel();
    },
    /** The second button opens the menu, and so do the keys that browsers have for it; a finger presses long. */
    onContextMenu: (event: MouseEvent) => {
      event.preventDefault();
      const { nativeEvent } = event;
      const type = 'pointerType' in nativeEvent ? nativeEvent.pointerType : undefined;
      if (type === 'touch' || parts().instrument?.isHeld()) return;
      if (type === '' || (type === undefined && event.button !== 2)) return parts().onMenu(undefined);
      menuAt(event, hitUnderMouse(event));
    },
    /** Takes a turn point, or a waypoint, out. */
    onDoubleClick: (event: MouseEvent) => {
      const { hand, instrument } = parts();
      if (!instrument?.isHeld()) takeOutAt(hitUnderMouse(event), hand);
    },
    onLostPointerCapture: (event: PointerEvent) => {
      if (gesture?.pointer === event.pointerId) cancel();
    },
    onPointerLeave: () => {
      parts().onPoint(undefined);
      parts().onHover(undefined);
    },
    wheel: (event: WheelEvent) => {
      event.preventDefault();
      const step = event.deltaMode === WheelEvent.DOM_DELTA_LINE ? 33 : 1;
      const pixels = Math.max(-240, Math.min(240, event.deltaY * step));
      // A pinch on a touchpad arrives as a wheel with Ctrl held, in much smaller steps.
      parts().viewpoint.zoom(Math.exp(-pixels * (event.ctrlKey ? 0.01 : 0.0016)), placeOf(event));
    },
  };
}

/** The middle button moves the paper, whatever is held; the others are the instrument's, or the bare hand's. */
function begin(
  { hand, instrument, picks }: PointerHandParts,
  event: PointerEvent,
  at: PointerAt,
  hitUnder: () => Hit | undefined,
): Gesture | undefined {
  const movePaper = () => pan.begin(undefined, at, { ...hand, select: () => undefined });
  if (event.button === 1 || (event.button === 0 && instrument?.movesPaper())) return movePaper();
  if (instrument?.isHeld()) {
    if (event.button !== 0 && event.button !== 2) return undefined;
    return instrument.press(at, { button: event.button === 0 ? 'first' : 'second', time: event.timeStamp });
  }
  if (event.button !== 0) return undefined;
  const hit = hitUnder();
  if (!picks()) return beginGesture(hit, at, hand);
  return pickHole.begin(hit, at, hand) ?? movePaper();
}

/** What two fingers did moves and zooms the view. */
function pinchOf(viewpoint: Viewpoint, [a, b]: readonly CanvasPoint[], [c, d]: readonly CanvasPoint[]): void {
  if (!a || !b || !c || !d) return;
  const did = pinchBetween([a, b], [c, d]);
  viewpoint.pan(did.by);
  viewpoint.zoom(did.factor, did.about);
}

const holeUnder = (hit: Extract<Hit, { readonly hole: HoleId }>) =>
  hit.kind === 'part' ? { hole: hit.hole, part: hit.part } : { hole: hit.hole };
