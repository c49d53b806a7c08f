import { expect, test } from 'vitest';
import type { Selection } from '../board/parts.ts';
import { openViewpoint } from '../drawing/viewpoint.ts';
import type { Frame } from '../live/frame.ts';
import { openSlot } from '../live/slot.ts';
import { ANALYSIS, PLAN, ROUTING } from '../reading/two-holes.test-plan.ts';
import type { BenchSession } from './bench.ts';
import type { InstrumentEntry } from './instrument-entry.ts';
import { openInstrumentHand } from './instrument-hand.ts';
import type { InstrumentName } from './instrument-name.ts';

const frameOf = (routing = ROUTING): Frame => ({
  plan: PLAN,
  routing,
  analysis: ANALYSIS,
  drags: [],
  mineInHand: false,
});

/** A session as far as the hand asks for it. */
function sessionOf(frame: Frame | undefined) {
  const shown = openSlot<Frame | undefined>(frame);
  const nothing = () => undefined;
  const session: BenchSession = {
    frame: shown,
    writtenPlan: openSlot(PLAN),
    selection: openSlot<Selection>({}),
    edit: () => 'done',
    drag: nothing,
    drop: () => 'done',
    select: nothing,
    say: nothing,
  };
  return { shown, session };
}

function entry(name: InstrumentName, told: string[], drawn: { half: boolean }): InstrumentEntry {
  return {
    instrument: {
      name,
      title: name,
      does: '',
      start: () => {
        told.push(`start ${name}`);
        return {
          prompt: openSlot(''),
          picture: openSlot({}),
          hover: () => undefined,
          press: () => undefined,
          letGo: () => {
            const had = drawn.half;
            drawn.half = false;
            told.push(`let go ${name}`);
            return had;
          },
          stop: () => told.push(`stop ${name}`),
        };
      },
    },
  };
}

function holding(frame?: Frame) {
  const told: string[] = [];
  const drawn = { half: true };
  const { session, shown } = sessionOf(frame);
  const hand = openInstrumentHand({
    session,
    viewpoint: openViewpoint(),
    reading: openSlot({ units: 'metres' as const, teeSet: 'back' }),
    me: { name: 'Ann', ink: 0 },
    random: () => 0.5,
    entries: [entry('rod', told, drawn), entry('pencil', told, drawn)],
  });
  return { hand, told, shown };
}

test('one instrument is held at a time', () => {
  const { hand, told } = holding(frameOf());
  hand.take('rod');
  hand.take('pencil');
  expect(told).toEqual(['start rod', 'stop rod', 'start pencil']);
  expect(hand.held.get()?.entry.instrument.name).toBe('pencil');
});

test('Escape puts back what is half drawn, then the instrument, then it is the board’s', () => {
  const { hand, told } = holding(frameOf());
  hand.take('rod');
  expect([hand.letGo(), hand.letGo(), hand.letGo()]).toEqual([true, true, false]);
  expect(told).toEqual(['start rod', 'let go rod', 'let go rod', 'stop rod']);
});

test('what is half drawn on one routing is put back when another is shown', () => {
  const { hand, told, shown } = holding(frameOf());
  hand.take('rod');
  shown.set(frameOf());
  shown.set(frameOf({ ...ROUTING, id: 'other' }));
  expect(told).toEqual(['start rod', 'let go rod']);
});

test('a board without a routing hands out nothing, and an unknown instrument leaves the bare hand', () => {
  const { hand } = holding();
  hand.take('rod');
  expect(hand.held.get()).toBeUndefined();
  const other = holding(frameOf());
  other.hand.take('north');
  expect(other.hand.held.get()).toBeUndefined();
});

test('closing the board leaves nothing half drawn', () => {
  const { hand, told } = holding(frameOf());
  hand.take('rod');
  hand.stop();
  expect(told).toEqual(['start rod', 'stop rod']);
});
