import { toSite } from '../drawing/site-transform.ts';
import type { Viewpoint } from '../drawing/viewpoint.ts';
import { type Gesture, hasTravelled, type PointerAt } from '../tools/tool.ts';
import type { InstrumentHand } from './instrument-hand.ts';

/** Which button a press was made with; a finger has the first. */
export type PressButton = 'first' | 'second';

/** Pointers while an instrument is held. */
export interface PointerWork {
  isHeld(): boolean;
  /** Whether a drag moves the paper now, by the key that is held. */
  movesPaper(): boolean;
  hover(at: PointerAt): void;
  /** @param time  milliseconds, of the event */
  press(at: PointerAt, how: { readonly button: PressButton; readonly time: number }): Gesture;
}

interface PointerWorkParts {
  readonly viewpoint: Viewpoint;
  /** Does it once, so many milliseconds from now, unless stopped. */
  readonly after: (milliseconds: number, work: () => void) => () => void;
}

/** Two presses within this time and distance are a double click. */
const DOUBLE = { milliseconds: 400, pixels: { mouse: 5, pen: 12, touch: 28 } } as const;
/** A finger held still this long does what the second button does. */
const LONG_PRESS = 550;
/** Pixels above a moving finger at which its cross stands: clear of the fingertip. */
const ABOVE_FINGER = 64;

/**
 * What pointers do with the instrument in the hand: a mouse hovers and presses; a second press in the same place, the
 * second button and a long press end what is drawn; a finger that moves carries a cross above itself.
 */
export function openPointerWork(hand: InstrumentHand, parts: PointerWorkParts): PointerWork {
  let last: { readonly at: PointerAt; readonly time: number } | undefined;

  const place = (at: PointerAt) => {
    hand.free.set(at.alt === true);
    hand.cross.set(undefined);
    hand.point.set(at.canvas);
  };
  const isSecond = (at: PointerAt, time: number): boolean => {
    if (!last || time - last.time > DOUBLE.milliseconds) return false;
    const [x, y] = [at.canvas.x - last.at.canvas.x, at.canvas.y - last.at.canvas.y];
    return x * x + y * y <= DOUBLE.pixels[at.kind] ** 2;
  };
  const press = (at: PointerAt, button: PressButton, time: number): Gesture | undefined => {
    const running = hand.held.get()?.running;
    if (!running) return undefined;
    if (running.finish && isSecond(at, time)) {
      last = undefined;
      running.finish();
      return undefined;
    }
    last = { at, time };
    const gesture = running.press(at, hand.drawing()?.hitAt(at));
    if (button === 'second') running.finish?.();
    return gesture;
  };
  const above = (at: PointerAt): PointerAt => {
    const canvas = { x: at.canvas.x, y: at.canvas.y - ABOVE_FINGER };
    return { ...at, canvas, site: toSite(parts.viewpoint.view.get(), canvas) };
  };
  /** A finger: presses when it is lifted, at its cross if it has moved. */
  const finger = (start: PointerAt, time: number): Gesture => {
    let state: 'down' | 'aiming' | 'over' = 'down';
    const stopWaiting = parts.after(LONG_PRESS, () => {
      if (state !== 'down') return;
      state = 'over';
      place(start);
      endNow(press(start, 'second', time), start);
    });
    const lift = () => {
      state = 'over';
      hand.point.set(undefined);
      hand.finger.set(undefined);
    };
    return {
      cursor: 'crosshair',
      move: (at) => {
        if (state === 'down' && hasTravelled(start, at)) state = 'aiming';
        if (state !== 'aiming') return;
        const aim = above(at);
        place(aim);
        hand.finger.set(aim.site);
        hand.held.get()?.running.hover(aim);
      },
      end: (at) => {
        stopWaiting();
        const aim = state === 'aiming' ? above(at) : start;
        if (state !== 'over') endNow(press(aim, 'first', time), aim);
        lift();
      },
      cancel: () => {
        stopWaiting();
        lift();
      },
    };
  };
  return {
    isHeld: () => hand.held.get() !== undefined,
    movesPaper: () => hand.held.get() !== undefined && hand.paper.get(),
    hover: (at) => {
      place(at);
      hand.held.get()?.running.hover(at);
    },
    press: (at, { button, time }) => {
      place(at);
      const aims = hand.held.get()?.entry.instrument.finger !== 'strokes';
      if (at.kind === 'touch' && aims && button === 'first') return finger(at, time);
      return press(at, button, time) ?? DONE;
    },
  };
}

/** A press that was all: nothing follows. */
const DONE: Gesture = { cursor: 'crosshair', move: () => undefined, end: () => undefined, cancel: () => undefined };

/** A finger has been lifted already: what the press began ends there. */
function endNow(gesture: Gesture | undefined, at: PointerAt): void {
  gesture?.end(at);
}
