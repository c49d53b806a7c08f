import type { CanvasPoint, HoleId, PartId, SitePoint } from '@loopwright/model';
import { type MouseEvent, type PointerEvent, type RefObject, useEffect, useMemo, useRef } from 'react';
import { toSite } from '../drawing/site-transform.ts';
import type { Viewpoint } from '../drawing/viewpoint.ts';
import type { PointerWork } from '../instruments/pointer-work.ts';
import { type Hit, hitAt, type PointerKind, REACH, type Targets } from './hit.ts';
import { openLongPress } from './long-press.ts';
import { pan } from './pan.ts';
import { pickHole } from './pick-hole.ts';
import { pinchBetween } from './pinch.ts';
import { takeOutAt } from './take-out-at.ts';
import type { Gesture, Hand, PointerAt } from './tool.ts';
import { beginGesture } from './tools.ts';

export interface PointerHandParts {
  readonly surface: RefObject<HTMLElement | null>;
  readonly viewpoint: Viewpoint;
  readonly targets: Targets;
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

const kindOf = (type: string): PointerKind => (type === 'touch' || type === 'pen' ? type : 'mouse');

function openPointerHand(parts: () => PointerHandParts) {
  const fingers = new Map<number, CanvasPoint>();
  let gesture: { readonly pointer: number; readonly does: Gesture } | undefined;

  const placeOf = (event: { readonly clientX: number; readonly clientY: number }): CanvasPoint => {
    const box = parts().surface.current?.getBoundingClientRect();
    return { x: event.clientX - (box?.left ?? 0), y: event.clientY - (box?.top ?? 0) };
  };
  const pointerAt = (event: PointerEvent): PointerAt => {
    const canvas = placeOf(event);
    return {
      canvas,
      site: toSite(parts().viewpoint.view.get(), canvas),
      kind: kindOf(event.pointerType),
      ...(event.shiftKey ? { shift: true } : {}),
      ...(event.ctrlKey || event.metaKey ? { adds: true } : {}),
      ...(event.altKey ? { alt: true } : {}),
    };
  };
  const hitUnder = (at: PointerAt) => {
    const { targets, viewpoint } = parts();
    return hitAt(targets, at.site, REACH[at.kind] / viewpoint.view.get().scale);
  };
  const cancel = () => {
    gesture?.does.cancel();
    gesture = undefined;
  };
  const pinch = (event: PointerEvent) => {
    const before = [...fingers.values()];
    fingers.set(event.pointerId, placeOf(event));
    const after = [...fingers.values()];
    const [a, b, c, d] = [before[0], before[1], after[0], after[1]];
    if (!a || !b || !c || !d) return;
    const did = pinchBetween([a, b], [c, d]);
    parts().viewpoint.pan(did.by);
    parts().viewpoint.zoom(did.factor, did.about);
  };

  /** The middle button moves the paper, whatever is held; the others are the instrument's, or the bare hand's. */
  const begin = (event: PointerEvent, at: PointerAt): Gesture | undefined => {
    const { hand, instrument } = parts();
    if (event.button === 1 || (event.button === 0 && instrument?.movesPaper())) {
      return pan.begin(undefined, at, { ...hand, select: () => undefined });
    }
    if (instrument?.isHeld()) {
      if (event.button !== 0 && event.button !== 2) return undefined;
      return instrument.press(at, { button: event.button === 0 ? 'first' : 'second', time: event.timeStamp });
    }
    if (event.button !== 0) return undefined;
    const hit = hitUnder(at);
    if (!parts().picks()) return beginGesture(hit, at, hand);
    return pickHole.begin(hit, at, hand) ?? pan.begin(undefined, at, { ...hand, select: () => undefined });
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
      const does = begin(event, at);
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
      const canvas = placeOf(event);
      const site = toSite(parts().viewpoint.view.get(), canvas);
      menuAt(event, hitUnder({ canvas, site, kind: 'mouse' }));
    },
    /** Takes a turn point, or a point of the walk, out. */
    onDoubleClick: (event: MouseEvent) => {
      const { hand, instrument, viewpoint } = parts();
      if (instrument?.isHeld()) return;
      const canvas = placeOf(event);
      takeOutAt(hitUnder({ canvas, site: toSite(viewpoint.view.get(), canvas), kind: 'mouse' }), hand);
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

const holeUnder = (hit: Extract<Hit, { readonly hole: HoleId }>) =>
  hit.kind === 'part' ? { hole: hit.hole, part: hit.part } : { hole: hit.hole };
