import { expect, test } from 'vitest';
import { ANALYSIS, PLAN, ROUTING } from '../../reading/two-holes.test-plan.ts';
import { toTotals } from './totals-view.ts';

const READING = { units: 'yards', teeSet: 'back' } as const;

test('without a change the totals carry no sign', () => {
  const rows = toTotals(ROUTING, ANALYSIS, undefined, READING);
  expect(rows.map(({ name, length, walk }) => [name, length, walk])).toEqual([
    ['Front nine', { figure: '564', change: '', sense: 'neither' }, { figure: '150', change: '', sense: 'neither' }],
    ['Round', { figure: '564', change: '', sense: 'neither' }, { figure: '150', change: '', sense: 'neither' }],
  ]);
});

test('more walking is worse, more length is neither', () => {
  const loops = ANALYSIS.loops.map((loop) => ({
    ...loop,
    walkLengths: [36.576, 45.72, 45.72],
    lengths: loop.lengths.map((each) => ({ ...each, holeLengths: [365.76, 140.856] })),
  }));
  const change = {
    state: 'done',
    edits: [],
    before: { ...ANALYSIS, loops },
    after: ANALYSIS,
    beforePlan: PLAN,
    ripple: { figures: [], findings: [] },
  } as const;
  const [front] = toTotals(ROUTING, ANALYSIS, change, READING);
  expect(front?.walk).toEqual({ figure: '150', change: '+10', sense: 'worse' });
  // 140.856 m is 154.04 yd: 400 + 154 before, 400 + 164 now.
  expect(front?.length).toEqual({ figure: '564', change: '+10', sense: 'neither' });
});

// 36.942 m is 40.4 yd: three such walks are 121.2 yd, and the beads show 40 + 40 + 40.
test('walks add up as they are shown', () => {
  const walkLengths = [36.942, 36.942, 36.942];
  const shown = {
    ...ANALYSIS,
    loops: ANALYSIS.loops.map((loop) => ({ ...loop, walkLengths })),
    rounds: ANALYSIS.rounds.map((round) => ({ ...round, walkLengths: [...walkLengths, ...walkLengths] })),
  };
  expect(toTotals(ROUTING, shown, undefined, READING).map(({ walk }) => walk.figure)).toEqual(['120', '240']);
});
