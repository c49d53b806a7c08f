import type { Hole, Plan, SiteMark } from '@loopwright/model';
import { expect, test } from 'vitest';
import { plainHole, plainPlan } from '../incremental/plain-plan.ts';
import { openAnalysis } from '../open-analysis.ts';
import { markUses, openMarkUses } from './mark-uses.ts';

// By hand: a straight hole north, tee at 0, green at 400;
// the landing ground is put where the analysis says the first one lies.
const hole = plainHole('h1', [
  { x: 0, y: 0 },
  { x: 0, y: 400 },
]);
const other = plainHole('h2', [
  { x: 500, y: 0 },
  { x: 500, y: 400 },
]);
const mark = (id: string, kind: SiteMark['kind'], x: number, y: number): SiteMark => {
  return { id, kind, at: { x, y }, verdict: 'natural' };
};
const landing = openAnalysis()
  .analyse(plainPlan([hole]), 'r')
  .holes.get('h1')?.tees[0]?.landingAreas[0] ?? { x: 0, y: 0 };
const MARKS = [
  mark('green', 'green site', 18, 424), // 30 m off by 3-4-5
  mark('past', 'green site', 18, 424.1),
  mark('tee', 'tee site', 3, 4),
  mark('ground', 'landing ground', landing.x + 10, landing.y),
  mark('nobodys', 'tee site', 0, 400), // a tee site by a green is not taken up by it
];
const withMarks = (holes: readonly Hole[]): Plan => {
  const plan = plainPlan(holes);
  return { ...plan, site: { ...plan.site, marks: MARKS } };
};

test('a mark is used by the hole whose green, tee or landing area lies within the setting’s 30 m', () => {
  const uses = markUses(withMarks([hole, other]));
  const of = { routing: 'r', hole: 'h1' };
  expect([...uses]).toEqual([
    ['green', [{ ...of, part: 'green', distance: 30 }]],
    ['past', []],
    ['tee', [{ ...of, part: 'tee:back', distance: 5 }]],
    ['ground', [{ ...of, part: 'landing area', distance: 10 }]],
    ['nobodys', []],
  ]);
});

test('what nobody uses is what the finding says, in every routing', () => {
  const plan = withMarks([hole, other]);
  const uses = markUses(plan);
  const unused = openAnalysis()
    .analyse(plan, 'r')
    .findings.filter(({ code }) => code === 'mark-unused');
  const about = unused.map(({ key }) => key.split('|').at(-1));
  expect(
    [...uses]
      .filter(([, by]) => by.length === 0)
      .map(([id]) => id)
      .sort(),
  ).toEqual(about.sort());
});

test('two routings on one mark are both named; spare and removed holes do not count', () => {
  const plan = withMarks([hole]);
  const [routing] = plan.routings;
  if (!routing) throw new Error('the plain plan has a routing');
  const spare: Hole = { ...hole, seat: { in: 'spare', key: 'a' } };
  const routings = [
    routing,
    { ...routing, id: 's' },
    { ...routing, id: 't', loops: [], holes: [spare], spare: ['h1'] },
  ];
  const uses = markUses({ ...plan, routings }).get('green') ?? [];
  expect(uses.map(({ routing: id }) => id)).toEqual(['r', 's']);
});

test('remembered uses are those worked out anew, whatever changes', () => {
  const uses = openMarkUses();
  const plan = withMarks([hole, other]);
  const wide: Plan = { ...plan, settings: { 'mark-taken-up': 50 } };
  const back: Plan = { ...plan, teeSets: plan.teeSets.map((set) => ({ ...set, player: 'bogey woman' })) };
  for (const next of [plan, wide, plan, back, plan]) expect(uses(next)).toEqual(markUses(next));
  expect(markUses(wide).get('past')).toHaveLength(1);
});

test('a board without marks has no uses', () => {
  expect(markUses(plainPlan([hole])).size).toBe(0);
});
