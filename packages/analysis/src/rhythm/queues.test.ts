import { expect, test } from 'vitest';
import { findingsOf, laidPlan } from './laid-round.ts';

test('groups 10 min apart do not queue on a par 3 that takes 9; 8 min apart the tenth waits 9', () => {
  const plan = laidPlan([{}, {}, { par: 3 }]);
  expect(findingsOf('queue', plan)).toEqual([]);
  const quicker = { ...plan, settings: { 'start-interval': 8 } };
  expect(findingsOf('queue', quicker)).toMatchObject([
    { holes: ['h03'], measured: 9, unit: 'min', severity: 'mention' },
  ]);
});

test('an early par 4 that can be driven holds one group at a time; a late one is not looked for', () => {
  // A drive of 228.6 m and 18 m of roll.
  const drivable = { par: 4, length: 246 } as const;
  expect(findingsOf('queue', laidPlan([{}, drivable, {}]))).toMatchObject([{ holes: ['h02'], measured: 18 }]);
  expect(findingsOf('queue', laidPlan([{}, { par: 4, length: 247 }, {}]))).toEqual([]);
  expect(findingsOf('queue', laidPlan([{}, {}, {}, {}, {}, drivable]))).toEqual([]);
});
