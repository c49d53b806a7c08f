import type { Analysis, Finding } from '@loopwright/analysis';
import { expect, test } from 'vitest';
import { ANALYSIS, PLAN, ROUTING } from '../reading/two-holes.test-plan.ts';
import { toRoundView } from './round-view.ts';
import { orderOf, stringItems } from './string-items.ts';

const READING = { units: 'yards', teeSet: 'back' } as const;
const SOURCE = { plan: PLAN, routing: ROUTING, analysis: ANALYSIS, reading: READING, people: [], change: undefined };

const FINDING: Finding = {
  key: 'long-walk|h1|h2',
  code: 'long-walk',
  severity: 'look',
  holes: ['h1', 'h2'],
  features: [],
  measured: 150,
  limit: 135,
  unit: 'm',
  worse: 'more',
  setting: 'long-walk-look',
  place: { type: 'round' },
  detail: {},
  safety: false,
};

test("a bead shows number, par, length in the reader's unit and the way it plays", () => {
  const view = toRoundView({ ...SOURCE, shown: [] });
  const first = view.loops[0]?.beads[0];
  expect(first).toMatchObject({ number: '1', par: '4', length: '400', arrow: 0, verdict: 'keeper' });
  expect(first?.said).toBe('Hole 1, par 4, 400 yd, playing north, a keeper');
});

test('a hole without a green says what it lacks', () => {
  const spare = toRoundView({ ...SOURCE, shown: [] }).spare[0];
  expect(spare).toMatchObject({ number: 'spare 1', par: '–', length: '–', arrow: undefined });
  expect(spare?.said).toBe('Hole spare 1, incomplete: no green yet');
});

test('the walk hangs under the hole it leaves, with its own finding', () => {
  const view = toRoundView({ ...SOURCE, shown: [FINDING] });
  expect(view.loops[0]?.threads.get('h1')).toMatchObject({ figure: '50', worst: 'look', change: '' });
  expect(view.loops[0]?.beads.map(({ worst }) => worst)).toEqual(['look', 'look']);
});

test('a change stands beside the figure it changed', () => {
  const h1 = ANALYSIS.holes.get('h1');
  if (!h1) throw new Error('the sample has no hole h1');
  const tees = h1.tees.map((tee) => ({ ...tee, measuredLength: tee.measuredLength - 9.144 }));
  const before: Analysis = { ...ANALYSIS, holes: new Map([...ANALYSIS.holes, ['h1', { ...h1, tees }]]) };
  const change = {
    state: 'done',
    edits: [],
    before,
    after: ANALYSIS,
    beforePlan: PLAN,
    ripple: { figures: [], findings: [] },
  } as const;
  expect(toRoundView({ ...SOURCE, change, shown: [] }).loops[0]?.beads[0]?.change).toBe('+10');
});

test('somebody else on a hole is named', () => {
  const jo = { client: 2, name: 'Jo', ink: 1, selection: ['h2'] };
  const bead = toRoundView({ ...SOURCE, people: [jo], shown: [] }).loops[0]?.beads[1];
  expect(bead?.heldBy).toEqual({ ink: 1, names: 'Jo' });
  expect(bead?.said).toMatch(/Jo is here$/);
});

test('a closed loop shows its base alone, and the tray is always there', () => {
  const view = toRoundView({ ...SOURCE, shown: [] });
  expect(stringItems(view, new Set(['front'])).map(({ kind }) => kind)).toEqual(['base', 'tray', 'bead']);
  expect(orderOf(stringItems(view, new Set()))).toBe('base front/to front/h1/from h1/h2/from h2/tray/s1');
});
