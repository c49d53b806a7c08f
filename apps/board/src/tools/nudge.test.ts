import { expect, test } from 'vitest';
import { ANALYSIS, PLAN, ROUTING } from '../reading/two-holes.test-plan.ts';
import { nudgeOf } from './nudge.ts';

const shown = { plan: PLAN, routing: ROUTING, analysis: ANALYSIS };
const by = { x: 0, y: 1 };

test('a nudge moves the part picked out, or the whole hole', () => {
  const green = nudgeOf(shown, { hole: 'h1', part: 'green' });
  expect(green?.editFor(by)).toMatchObject({ edit: 'move part', to: { x: 0, y: 366.76 } });
  expect(nudgeOf(shown, { hole: 'h1' })?.editFor(by)).toEqual({ edit: 'move hole', routing: 'a', hole: 'h1', by });
});

test('several holes move as one step, and hold all their parts', () => {
  const both = nudgeOf(shown, { hole: 'h2', also: ['h1'], part: 'green' });
  expect(both?.editFor(by)).toEqual({ edit: 'move holes', routing: 'a', holes: ['h1', 'h2'], by });
  expect(both?.holds).toEqual([
    { hole: 'h1', parts: ['tee:back', 'green'] },
    { hole: 'h2', parts: ['tee:back', 'green'] },
  ]);
});

test('a tee that is only proposed is placed by being nudged, from where it was proposed', () => {
  const h1 = ANALYSIS.holes.get('h1');
  const [tee] = h1?.tees ?? [];
  if (!h1 || !tee) throw new Error('the sample has no tee');
  const proposed = { ...tee, teeSet: 'forward', at: { x: 5, y: 60 }, proposed: true };
  const analysis = { ...ANALYSIS, holes: new Map(ANALYSIS.holes).set('h1', { ...h1, tees: [tee, proposed] }) };
  const nudging = nudgeOf({ ...shown, analysis }, { hole: 'h1', part: 'tee:forward' });
  expect(nudging?.editFor(by)).toMatchObject({ part: 'tee:forward', to: { x: 5, y: 61 } });
});

test('what is not there cannot be nudged', () => {
  expect(nudgeOf(shown, {})).toBeUndefined();
  expect(nudgeOf(shown, { hole: 'gone' })).toBeUndefined();
  expect(nudgeOf(shown, { hole: 'h1', part: 'turn:t1' })).toBeUndefined();
});
