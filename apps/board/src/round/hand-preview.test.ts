import { compareAnalyses } from '@loopwright/analysis';
import { expect, test } from 'vitest';
import { namesOf } from '../reading/names.ts';
import { ANALYSIS, PLAN, ROUTING } from '../reading/two-holes.test-plan.ts';
import { toHandPreview } from './hand-preview.ts';
import type { Held } from './use-bead-hand.ts';

const NAMES = namesOf(PLAN, ROUTING, 'yards');
const READING = { units: 'yards', teeSet: 'back' } as const;
const HELD: Held = {
  hole: 'h2',
  holes: ['h2'],
  by: 'keys',
  routing: ROUTING,
  place: { in: 'loop', loop: 'front', after: 'first' },
};
const SOURCE = { held: HELD, analysis: ANALYSIS, round: undefined, reading: READING, findingsShown: true };

/** Hole 2 is played first, and the walks are 100 m longer. */
const turned = { ...ROUTING, loops: ROUTING.loops.map((loop) => ({ ...loop, holes: ['h2', 'h1'] })) };
const before = {
  ...ANALYSIS,
  rounds: ANALYSIS.rounds.map((round) => ({
    ...round,
    walkLengths: round.walkLengths.map((length) => length - 9.144),
  })),
};
const change = {
  state: 'in progress',
  edits: [],
  before,
  after: ANALYSIS,
  beforePlan: PLAN,
  ripple: compareAnalyses(before, ANALYSIS),
} as const;

// By hand: each of the three walks is 45.72 m = 50 yd, and was 36.576 m = 40 yd; 365.76 m and 150 m are 400 and 164 yd.
test('walks and nines before and then, as the card prints them', () => {
  const names = { before: NAMES, now: namesOf(PLAN, turned, 'yards') };
  const preview = toHandPreview({ ...SOURCE, routing: turned, change }, names);
  expect(preview.title).toBe('Hole 2 becomes 1');
  expect(preview.rows).toEqual([
    { key: 'walks', what: 'Walks', before: '120', after: '150', change: '+30' },
    { key: 'front', what: 'Front nine', before: 'par 7 · 564', after: 'par 7 · 564', change: '' },
  ]);
  expect(preview.said).toBe('Hole 2 becomes 1. Walks 120, now 150');
});

test('beads held where they were say so and change nothing', () => {
  const names = { before: NAMES, now: NAMES };
  const preview = toHandPreview({ ...SOURCE, routing: ROUTING, change: undefined }, names);
  expect(preview).toMatchObject({ title: 'Hole 2, where it was', worst: [], said: '' });
});

test('over the tray the hole leaves the round', () => {
  const names = { before: NAMES, now: NAMES };
  const held: Held = { ...HELD, place: { in: 'tray' } };
  expect(toHandPreview({ ...SOURCE, held, routing: ROUTING, change }, names).title).toBe('Hole 2 out of the round');
});
