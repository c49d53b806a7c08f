import type { Stop } from '@loopwright/document';
import type { CanvasPoint, SitePoint } from '@loopwright/model';
import type { Me, Reading } from '../board/parts.ts';
import { toCanvas } from '../drawing/site-transform.ts';
import type { Viewpoint } from '../drawing/viewpoint.ts';
import { openSlot, type Slot, type Watched } from '../live/slot.ts';
import type { Hit } from '../tools/hit.ts';
import type { PointerAt, SnapBeside } from '../tools/tool.ts';
import { type BenchSession, openBench } from './bench.ts';
import type { Running } from './instrument.ts';
import type { InstrumentEntry } from './instrument-entry.ts';
import type { InstrumentName } from './instrument-name.ts';
import { openSnap } from './snap/open-snap.ts';

/** An instrument in the hand. */
export interface Held {
  readonly entry: InstrumentEntry;
  readonly running: Running;
}

/** What the drawing lends to the hand. */
export interface DrawingHold {
  hitAt(at: PointerAt): Hit | undefined;
  /** Gives the drawing the keyboard. */
  focus(): void;
}

/** The hand that holds one instrument at a time, or none: the bare hand. */
export interface InstrumentHand {
  readonly entries: readonly InstrumentEntry[];
  readonly held: Watched<Held | undefined>;
  readonly snapping: Watched<boolean>;
  /** The keyboard's cross on the ground, while it is in use. */
  readonly cross: Slot<SitePoint | undefined>;
  /** Where the instrument's point is on the canvas: under a mouse, above a finger, at the cross. */
  readonly point: Slot<CanvasPoint | undefined>;
  /** The place above a finger that aims, while it is down. */
  readonly finger: Slot<SitePoint | undefined>;
  /** What is said to those who listen while the cross moves. */
  readonly heard: Slot<string>;
  /** Whether the person holds the key that snaps to nothing. */
  readonly free: Slot<boolean>;
  /** Whether the person holds the key with which a drag moves the paper. */
  readonly paper: Slot<boolean>;
  take(name: InstrumentName): void;
  putAway(): void;
  setSnapping(on: boolean): void;
  /** Draws a vertex that the bare hand moves to guides nearby. */
  readonly snapVertex: (at: SitePoint, beside: SnapBeside) => SitePoint;
  /** Lends the drawing, until stopped. */
  lend(drawing: DrawingHold): Stop;
  drawing(): DrawingHold | undefined;
  /** Tells how the field for typed values gets the keyboard, until stopped. */
  lendEntry(focus: () => void): Stop;
  /** Gives the keyboard to the field for typed values; whether there is one. */
  toEntry(): boolean;
  /** The cross goes on from there: something was typed. */
  goOnFrom(at: SitePoint | undefined): void;
  /** One step back in what is drawn; whether there was one. */
  back(): boolean;
  /** Puts back what is half drawn, else puts the instrument away; whether there was either. */
  letGo(): boolean;
  stop(): void;
}

export interface InstrumentHandParts {
  readonly session: BenchSession;
  readonly viewpoint: Viewpoint;
  readonly reading: Watched<Reading>;
  readonly me: Me;
  readonly random: () => number;
  readonly entries: readonly InstrumentEntry[];
}

export function openInstrumentHand(parts: InstrumentHandParts): InstrumentHand {
  const { session, entries } = parts;
  const held = openSlot<Held | undefined>(undefined);
  const snapping = openSlot(true);
  const free = openSlot(false);
  const paper = openSlot(false);
  const cross = openSlot<SitePoint | undefined>(undefined);
  const point = openSlot<CanvasPoint | undefined>(undefined);
  const finger = openSlot<SitePoint | undefined>(undefined);
  const heard = openSlot('');
  let lent: DrawingHold | undefined;
  let toEntry: (() => void) | undefined;

  const snap = openSnap({ ...parts, isOff: () => !snapping.get() || free.get() });
  const putAway = () => {
    const now = held.get();
    held.set(undefined);
    now?.running.stop();
    for (const slot of [cross, point, finger]) slot.set(undefined);
    heard.set('');
  };
  const bench = openBench({ ...parts, snap, putAway });
  const stopFrames = followRouting(session, () => held.get()?.running.letGo());

  return {
    entries,
    held,
    snapping,
    cross,
    point,
    finger,
    heard,
    free,
    paper,
    take: (name) => {
      putAway();
      const entry = entries.find(({ instrument }) => instrument.name === name);
      if (!entry || !session.frame.get()) return;
      held.set({ entry, running: entry.instrument.start(bench) });
      lent?.focus();
    },
    putAway,
    setSnapping: snapping.set,
    snapVertex: (at, beside) => snap(at, { ...beside, for: 'vertex' }).at,
    lend: (drawing) => {
      lent = drawing;
      return () => {
        if (lent === drawing) lent = undefined;
      };
    },
    drawing: () => lent,
    lendEntry: (focus) => {
      toEntry = focus;
      return () => {
        if (toEntry === focus) toEntry = undefined;
      };
    },
    toEntry: () => {
      toEntry?.();
      return toEntry !== undefined;
    },
    goOnFrom: (at) => {
      if (!at) return;
      if (cross.get()) cross.set(at);
      point.set(toCanvas(parts.viewpoint.view.get(), at));
    },
    back: () => held.get()?.running.back?.() ?? false,
    letGo: () => {
      const now = held.get();
      if (!now) return false;
      if (!now.running.letGo()) putAway();
      return true;
    },
    stop: () => {
      stopFrames();
      putAway();
    },
  };
}

/** Tells when another routing is shown: what is half drawn belongs to the one before. */
function followRouting({ frame }: BenchSession, changed: () => void): Stop {
  let shown = frame.get()?.routing.id;
  return frame.onChange(() => {
    const now = frame.get()?.routing.id;
    if (now === shown) return;
    shown = now;
    changed();
  });
}
