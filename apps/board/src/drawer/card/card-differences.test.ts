import type { Analysis, TotalLengths } from '@loopwright/analysis';
import { expect, test } from 'vitest';
import { ANALYSIS, ROUTING } from '../../reading/two-holes.test-plan.ts';
import { differencesOf } from './card-differences.ts';

const lengths = (back: readonly number[], forward: readonly number[]): readonly TotalLengths[] => [
  { teeSet: 'back', measuredLength: 0, holeLengths: back },
  { teeSet: 'forward', measuredLength: 0, holeLengths: forward },
];

const routing = {
  ...ROUTING,
  loops: [
    { id: 'out', name: 'Out', holes: ['h1'] },
    { id: 'in', name: 'In', holes: ['h2'] },
  ],
  rounds: [{ id: 'day', name: 'Round', loops: ['out', 'in'] }],
};

const [loop] = ANALYSIS.loops;
const [round] = ANALYSIS.rounds;
if (!loop || !round) throw new Error('the sample has no loop or no round');
const analysis: Analysis = {
  ...ANALYSIS,
  loops: [
    { ...loop, loop: 'out', lengths: lengths([400.4], [300.4]) },
    { ...loop, loop: 'in', lengths: lengths([150.4], [150.4]) },
  ],
  rounds: [{ ...round, lengths: lengths([400.4, 150.4], [300.4, 150.4]) }],
};

// By hand, each hole rounded before it is summed: 550 and 450 in all; 400 and 150, 300 and 150 loop by loop.
test('tee sets differ from the one before, and the first loop from the second, as printed', () => {
  const rows = differencesOf(routing, analysis, 'metres', 'day').map(({ name, lengths: columns }) => [
    name,
    ...columns.map(({ figure }) => figure),
  ]);
  expect(rows).toEqual([
    ['from the set before', '', '−100'],
    ['Out less In', '+250', '+150'],
  ]);
});

test('one loop and one tee set have nothing to differ from', () => {
  expect(differencesOf(ROUTING, ANALYSIS, 'metres', 'day')).toEqual([]);
});

test('a round that is gone, or none, has no differences', () => {
  expect(differencesOf(routing, analysis, 'metres', 'gone')).toEqual([]);
  expect(differencesOf(routing, analysis, 'metres', undefined)).toEqual([]);
});
