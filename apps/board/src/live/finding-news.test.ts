import type { Analysis, FindingChange } from '@loopwright/analysis';
import { expect, test } from 'vitest';
import type { Change } from '../board/parts.ts';
import { ANALYSIS, PLAN, ROUTING } from '../reading/two-holes.test-plan.ts';
import { AT_REST, AT_THE_LATEST, openFindingNews } from './finding-news.ts';
import type { Frame } from './frame.ts';
import { openSlot } from './slot.ts';

/** A clock that only goes on when it is told to. */
function openTestClock() {
  let now = 0;
  let waiting: { readonly at: number; readonly work: () => void }[] = [];
  return {
    after: (milliseconds: number, work: () => void) => {
      const entry = { at: now + milliseconds, work };
      waiting.push(entry);
      return () => {
        waiting = waiting.filter((each) => each !== entry);
      };
    },
    goOn: (milliseconds: number) => {
      now += milliseconds;
      const due = waiting.filter(({ at }) => at <= now);
      waiting = waiting.filter(({ at }) => at > now);
      for (const { work } of due) work();
    },
  };
}

const state = (): Analysis => ({ ...ANALYSIS });
const frameOf = (analysis: Analysis, more: Partial<Frame> = {}): Frame => ({
  plan: PLAN,
  routing: ROUTING,
  analysis,
  drags: [],
  mineInHand: false,
  ...more,
});
const doneBy = (by?: Change['by']): Change => ({
  state: 'done',
  edits: [{ edit: 'reverse hole', routing: 'a', hole: 'h1' }],
  before: ANALYSIS,
  after: ANALYSIS,
  beforePlan: PLAN,
  ripple: { figures: [], findings: [] },
  ...(by ? { by } : {}),
});
const CAME: FindingChange = { change: 'gained', key: 'a' };

function opened() {
  const clock = openTestClock();
  const frame = openSlot<Frame | undefined>(frameOf(state()));
  const compared: [Analysis, Analysis][] = [];
  const { news } = openFindingNews({
    frame,
    after: clock.after,
    compare: (before, after) => {
      compared.push([before, after]);
      return before === after ? [] : [CAME];
    },
  });
  return { clock, frame, news, compared };
}

test('a step of mine is told at once', () => {
  const { frame, news } = opened();
  const after = frameOf(state(), { change: doneBy() });
  frame.set(after);
  expect(news.get()).toEqual({ changes: [CAME], frame: after });
});

test('a drag tells nothing until it rests, then all of it once', () => {
  const { clock, frame, news, compared } = opened();
  const before = frame.get()?.analysis;
  for (let picture = 0; picture < 60; picture++) {
    frame.set(frameOf(state(), { mineInHand: true }));
    clock.goOn(16);
  }
  expect(compared).toHaveLength(0);
  clock.goOn(AT_REST);
  expect(compared).toEqual([[before, frame.get()?.analysis]]);
  expect(news.get()?.changes).toEqual([CAME]);
});

test('what others do is gathered; the same picture again is no news', () => {
  const { clock, frame, compared } = opened();
  frame.set(frameOf(state(), { change: doneBy({ name: 'Ben', ink: 1 }) }));
  clock.goOn(AT_REST - 1);
  const last = state();
  frame.set(frameOf(last));
  clock.goOn(AT_REST);
  frame.set(frameOf(last));
  clock.goOn(AT_THE_LATEST);
  expect(compared).toHaveLength(1);
});

test('a crowd that never rests is told of in time, but not into a drag of mine', () => {
  const { clock, frame, compared } = opened();
  const crowd = (mineInHand: boolean) => {
    for (let picture = 0; picture < AT_THE_LATEST / 100 + 1; picture++) {
      frame.set(frameOf(state(), { mineInHand }));
      clock.goOn(100);
    }
  };
  crowd(true);
  expect(compared).toHaveLength(0);
  crowd(false);
  expect(compared).toHaveLength(1);
});

test('another routing is not told as a change', () => {
  const { clock, frame, compared } = opened();
  frame.set(frameOf({ ...ANALYSIS, routing: 'b' }));
  clock.goOn(AT_THE_LATEST);
  expect(compared).toHaveLength(0);
});
