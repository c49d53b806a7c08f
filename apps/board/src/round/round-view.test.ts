import type { Analysis, Finding } from '@loopwright/analysis';
import { expect, test } from 'vitest';
import { ANALYSIS, PLAN, ROUTING } from '../reading/two-holes.test-plan.ts';
import { toRoundView } from './round-view.ts';
import { orderOf, reachable, stringItems } from './string-items.ts';

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

test('Tab always reaches a bead: the one picked out, or the first where that one is folded away', () => {
  const view = toRoundView({ ...SOURCE, shown: [] });
  expect(reachable(stringItems(view, new Set()), 'h2')).toBe('h2');
  expect(reachable(stringItems(view, new Set(['front'])), 'h2')).toBe('s1');
  expect(reachable([], 'h2')).toBeUndefined();
});

test('a chosen round shows its loops alone, in its order, and its totals', () => {
  const back = { id: 'back', name: 'Back', holes: [] };
  const rounds = [...ROUTING.rounds, { id: 'other', name: 'Back + Front', loops: ['back', 'front', 'back'] }];
  const routing = { ...ROUTING, loops: [...ROUTING.loops, back], rounds };
  expect(toRoundView({ ...SOURCE, routing, shown: [] }).loops.map(({ name }) => name)).toEqual(['Front nine', 'Back']);
  const other = toRoundView({ ...SOURCE, routing, shown: [], round: 'other' });
  expect(other.loops.map(({ name }) => name)).toEqual(['Back', 'Front nine']);
  // By hand: 365.76 m and 150 m are 400 and 164 yd; three walks of 45.72 m are 50 yd each.
  expect(other.loops[1]).toMatchObject({ holes: '2 holes', length: '564', walks: '150' });
});
