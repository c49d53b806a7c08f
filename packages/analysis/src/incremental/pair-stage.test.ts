import { type Plan, seededRandom } from '@loopwright/model';
import { expect, test, vi } from 'vitest';
import { checkHoleBoundary } from '../clearance/boundary.ts';
import { checkHolePair } from '../clearance/hole-pair.ts';
import { openAnalysis } from '../open-analysis.ts';
import { moveGreen } from './random-hole-edit.ts';
import { randomPlan } from './random-plan.ts';

// Counted work, the same on every machine: a frame of a drag looks only at what the moved hole can have changed.
vi.mock('../clearance/hole-pair.ts', { spy: true });
vi.mock('../clearance/boundary.ts', { spy: true });
const pairs = vi.mocked(checkHolePair);
const edges = vi.mocked(checkHoleBoundary);

const HOLES = 18;
const plan = randomPlan(seededRandom(18));
const moved = moveGreen(plan, seededRandom(4));

function workOf(analyse: () => unknown): readonly [pairs: number, holes: number] {
  pairs.mockClear();
  edges.mockClear();
  analyse();
  return [pairs.mock.calls.length, edges.mock.calls.length];
}

test('a full run looks at every two holes once', () => {
  expect(workOf(() => openAnalysis().analyse(plan, 'r'))).toEqual([(HOLES * (HOLES - 1)) / 2, HOLES]);
});

test('a moved hole is looked at with every other, and by itself against the site; nothing else is', () => {
  const analysis = openAnalysis();
  analysis.analyse(plan, 'r');
  expect(workOf(() => analysis.analyse(moved, 'r'))).toEqual([HOLES - 1, 1]);
});

test('a plan before and after a drag by turns costs nothing but the new frame', () => {
  const analysis = openAnalysis();
  analysis.analyse(plan, 'r');
  analysis.analyse(moved, 'r');
  expect(workOf(() => analysis.analyse(plan, 'r'))).toEqual([0, 0]);
  expect(workOf(() => analysis.analyse(moved, 'r'))).toEqual([0, 0]);
});

test('two people dragging two holes: the pairs of both', () => {
  const both = movedTwice(plan);
  const analysis = openAnalysis();
  analysis.analyse(plan, 'r');
  expect(workOf(() => analysis.analyse(both, 'r'))).toEqual([2 * (HOLES - 1) - 1, 2]);
});

/** The greens of two different holes moved. */
function movedTwice(from: Plan): Plan {
  for (let seed = 1; ; seed++) {
    const both = moveGreen(moved, seededRandom(seed));
    const holes = both.routings[0]?.holes.filter((hole, place) => hole !== from.routings[0]?.holes[place]);
    if (holes?.length === 2) return both;
  }
}

test('two holes that change places in the round: only pairs that are or were consecutive', () => {
  const analysis = openAnalysis();
  analysis.analyse(plan, 'r');
  const swapped: Plan = {
    ...plan,
    routings: plan.routings.map((routing) => ({
      ...routing,
      loops: routing.loops.map((loop) => ({
        ...loop,
        holes: loop.holes.map((id) => (id === 'h03' ? 'h06' : id === 'h06' ? 'h03' : id)),
      })),
    })),
  };
  const [count, holes] = workOf(() => analysis.analyse(swapped, 'r'));
  // Four neighbours lost, four gained.
  expect(count).toBeLessThanOrEqual(8);
  expect(holes).toBe(0);
});

test('a limit that is changed: every pair again, once', () => {
  const analysis = openAnalysis();
  analysis.analyse(plan, 'r');
  const wider: Plan = { ...plan, settings: { 'landing-tee-look': 65 } };
  expect(workOf(() => analysis.analyse(wider, 'r'))[0]).toBe((HOLES * (HOLES - 1)) / 2);
  expect(workOf(() => analysis.analyse({ ...wider, settings: { ...wider.settings } }, 'r'))[0]).toBe(0);
});
