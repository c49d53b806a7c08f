import type { CanvasPoint, SitePoint } from '@loopwright/model';
import { type PointerEvent, type RefObject, useEffect, useMemo, useRef } from 'react';
import { toSite } from '../drawing/site-transform.ts';
import type { Viewpoint } from '../drawing/viewpoint.ts';
import type { PointerWork } from '../instruments/pointer-work.ts';
import { type Hit, hitAt, type PointerKind, REACH, type Targets } from './hit.ts';
import { pan } from './pan.ts';
import { pinchBetween } from './pinch.ts';
import type { Gesture, Hand, PointerAt } from './tool.ts';
import { beginGesture } from './tools.ts';

interface PointerHandParts {
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
    return event.button === 0 ? beginGesture(hitUnder(at), at, hand) : undefined;
  };
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
      if (fingers.size > 1) return cancel();
      if (gesture) return;
      const does = begin(event, at);
      if (!does) return;
      gesture = { pointer: event.pointerId, does };
      parts().surface.current?.setPointerCapture(event.pointerId);
    },
    onPointerMove: (event: PointerEvent) => {
      if (fingers.size > 1) return pinch(event);
      const at = pointerAt(event);
      parts().onPlace(at.canvas);
      parts().onPoint(at.site);
      if (gesture?.pointer === event.pointerId) gesture.does.move(at);
      else if (at.kind !== 'touch') hover(at);
    },
    onPointerUp: (event: PointerEvent) => {
      fingers.delete(event.pointerId);
      if (gesture?.pointer !== event.pointerId) return;
      const { does } = gesture;
      gesture = undefined;
      does.end(pointerAt(event));
    },
    /** Taken away by the browser or the system: nothing was decided. */
    onPointerCancel: (event: PointerEvent) => {
      fingers.delete(event.pointerId);
      if (gesture?.pointer === event.pointerId) cancel();
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
