import type { Stop } from '@loopwright/document';
import { routingShown } from '../live/frame.ts';
import { namesOf } from '../reading/names.ts';
import { chance } from './chance.ts';
import { type InstrumentHand, type InstrumentHandParts, openInstrumentHand } from './instrument-hand.ts';
import { type KeyWork, openKeyWork } from './key-work.ts';
import { openPointerWork, type PointerWork } from './pointer-work.ts';
import { openInstruments } from './registry.tsx';
import { InstrumentTray } from './tray/InstrumentTray.tsx';
import { whereWords } from './where-words.ts';

/** The instruments of one board laid out: the hand that holds them, and what pointers and keys do with it. */
export interface DrawingTable {
  readonly hand: InstrumentHand;
  readonly pointers: PointerWork;
  readonly keys: KeyWork;
  /** Its view, which is loaded with it. */
  readonly Tray: typeof InstrumentTray;
  readonly stop: Stop;
}

export function openDrawingTable(parts: Omit<InstrumentHandParts, 'entries' | 'random'>): DrawingTable {
  const { session, viewpoint, reading } = parts;
  const hand = openInstrumentHand({ ...parts, entries: openInstruments(), random: chance });
  return {
    hand,
    pointers: openPointerWork(hand, {
      viewpoint,
      after: (milliseconds, work) => {
        const timer = setTimeout(work, milliseconds);
        return () => clearTimeout(timer);
      },
    }),
    keys: openKeyWork(hand, {
      session,
      viewpoint,
      where: (at) => {
        // As it is written: what is being drawn would always be the nearest.
        const plan = session.writtenPlan.get();
        const routing = routingShown(plan, session.frame.get()?.routing.id);
        return routing ? whereWords({ plan, routing }, namesOf(plan, routing, reading.get().units), at) : '';
      },
    }),
    Tray: InstrumentTray,
    stop: hand.stop,
  };
}
