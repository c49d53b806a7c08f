import type { SitePoint } from '@loopwright/model';
import { toCanvas, toSite } from '../drawing/site-transform.ts';
import type { Viewpoint } from '../drawing/viewpoint.ts';
import type { BoardSession } from '../live/board-session.ts';
import type { PointerAt } from '../tools/tool.ts';
import type { InstrumentHand } from './instrument-hand.ts';
import { instrumentOf, SNAP_LETTER } from './letters.ts';

/** The keyboard while an instrument is held, and the letters that take one. */
export interface KeyWork {
  /** Whether the key was the hand's: nobody else then takes it. */
  down(pressed: PressedKey): boolean;
  up(key: string): void;
}

export interface PressedKey {
  readonly key: string;
  readonly shiftKey: boolean;
  readonly altKey: boolean;
  readonly ctrlKey: boolean;
  readonly metaKey: boolean;
}

/** Metres an arrow moves the cross: as far as a hole asks for, and with Shift as exactly. */
export const CROSS_STEP = { plain: 10, shift: 1 } as const;

interface KeyWorkParts {
  readonly session: Pick<BoardSession, 'frame' | 'say'>;
  readonly viewpoint: Viewpoint;
  /** Where a place lies, in words: '34 yd east of green 4'. */
  readonly where: (at: SitePoint) => string;
}

const ARROWS: Readonly<Record<string, readonly [number, number]>> = {
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
};

/** What begins a typed value: a digit, the sign that speaks of the whole hole, the bracket of a place. */
const TYPES = /^[0-9=(]$/;

export function openKeyWork(hand: InstrumentHand, parts: KeyWorkParts): KeyWork {
  const cross = openCross(hand, parts);
  const whileHeld = ({ key, shiftKey, altKey }: PressedKey): boolean => {
    const running = hand.held.get()?.running;
    // Alt and an arrow go back and on in the browser.
    if (!running || altKey) return false;
    if (key in ARROWS) {
      cross.move(key, shiftKey);
      return true;
    }
    if (key === ' ') {
      if (!cross.press()) hand.paper.set(true);
      return true;
    }
    if (key === 'Enter') return cross.end();
    if (key === 'Backspace') {
      running.back?.();
      cross.tell();
      return true;
    }
    if (key === 'Escape') return hand.letGo();
    return TYPES.test(key) && running.entry?.get() !== undefined && hand.toEntry();
  };
  return {
    down: (pressed) => {
      const key = pressed.key.toLowerCase();
      if (pressed.ctrlKey || pressed.metaKey) return key === 'z' && !pressed.shiftKey && !pressed.altKey && hand.back();
      if (pressed.key === 'Alt') {
        hand.free.set(true);
        return hand.held.get() !== undefined;
      }
      if (whileHeld(pressed)) return true;
      if (pressed.altKey || pressed.shiftKey) return false;
      if (key === SNAP_LETTER) {
        hand.setSnapping(!hand.snapping.get());
        parts.session.say(hand.snapping.get() ? 'Snapping is on.' : 'Snapping is off.');
        return true;
      }
      const name = instrumentOf(key);
      if (name) hand.take(name);
      return name !== undefined;
    },
    up: (key) => {
      if (key === 'Alt') hand.free.set(false);
      if (key === ' ') hand.paper.set(false);
    },
  };
}

/** The cross that the arrows move over the ground: it hovers and presses as a pointer does. */
function openCross(hand: InstrumentHand, { viewpoint, where, session }: KeyWorkParts) {
  let isFresh = false;
  const pointerAt = (site: SitePoint): PointerAt => ({
    site,
    canvas: toCanvas(viewpoint.view.get(), site),
    kind: 'mouse',
  });
  const start = (): SitePoint => {
    const { width, height } = viewpoint.size.get();
    return toSite(viewpoint.view.get(), hand.point.get() ?? { x: width / 2, y: height / 2 });
  };
  const tell = () => {
    const at = hand.cross.get();
    const held = hand.held.get();
    if (!at || !held) return;
    const said = held.running.picture.get().atPointer ?? [];
    hand.heard.set([...said, where(at)].filter((words) => words !== '').join('; '));
  };
  const put = (at: SitePoint) => {
    const frame = session.frame.get();
    if (frame) viewpoint.show({ kind: 'point', at }, frame);
    hand.cross.set(at);
    hand.point.set(pointerAt(at).canvas);
    hand.held.get()?.running.hover(pointerAt(at));
    isFresh = true;
    tell();
  };
  const press = (at: SitePoint) => {
    const pointer = pointerAt(at);
    hand.held.get()?.running.press(pointer, hand.drawing()?.hitAt(pointer))?.end(pointer);
    isFresh = false;
    tell();
  };
  return {
    tell,
    move: (key: string, isFine: boolean) => {
      const [x, y] = ARROWS[key] ?? [0, 0];
      const step = isFine ? CROSS_STEP.shift : CROSS_STEP.plain;
      const at = hand.cross.get();
      put(at ? { x: at.x + x * step, y: at.y + y * step } : start());
    },
    /** Presses at the cross; without one Space is left to moving the paper. */
    press: (): boolean => {
      const at = hand.cross.get();
      if (at) press(at);
      return at !== undefined;
    },
    /** The last point is here, or where the last one was pressed. */
    end: (): boolean => {
      const [at, running] = [hand.cross.get(), hand.held.get()?.running];
      if (at && (isFresh || !running?.finish)) press(at);
      running?.finish?.();
      tell();
      return true;
    },
  };
}
