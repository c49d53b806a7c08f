import { expect, test } from 'vitest';
import { ANALYSIS, PLAN, ROUTING } from '../../reading/two-holes.test-plan.ts';
import { toHolePoints } from './points-view.ts';

test('every hole is listed with its points, spare ones last', () => {
  const holes = toHolePoints(PLAN, ROUTING, ANALYSIS, 'yards');
  expect(holes.map(({ title, summary }) => [title, summary])).toEqual([
    ['Hole 1', 'par 4, 400 yd, north'],
    ['Hole 2', 'par 3, 164 yd, north'],
    ['Spare: spare 1', 'no green yet'],
  ]);
  expect(holes[0]?.points).toEqual([
    { part: 'tee:back', what: 'back tee 1', east: 0, north: 0, proposed: false, pinned: false },
    { part: 'green', what: 'green 1', east: 0, north: 365.76, proposed: false, pinned: false },
  ]);
});

test('a proposed tee is listed as ours until it is moved', () => {
  const h1 = ANALYSIS.holes.get('h1');
  const tee = h1?.tees[0];
  if (!h1 || !tee) throw new Error('the sample has no tee');
  const forward = { ...tee, teeSet: 'forward', at: { x: 5, y: 60 }, proposed: true };
  const holes = new Map(ANALYSIS.holes).set('h1', { ...h1, tees: [tee, forward] });
  const plan = {
    ...PLAN,
    teeSets: [...PLAN.teeSets, { id: 'forward', name: 'Forward', player: 'bogey woman' } as const],
  };
  expect(toHolePoints(plan, ROUTING, { ...ANALYSIS, holes }, 'yards')[0]?.points[1]).toMatchObject({
    what: 'forward tee 1',
    east: 5,
    proposed: true,
  });
});

test('where full shots finish is said with its place', () => {
  const h1 = ANALYSIS.holes.get('h1');
  const tee = h1?.tees[0];
  if (!h1 || !tee) throw new Error('the sample has no tee');
  const landing = { ...tee, landingAreas: [{ x: 1, y: 240 }] };
  const holes = new Map(ANALYSIS.holes).set('h1', { ...h1, tees: [landing] });
  const [first, second] = toHolePoints(PLAN, ROUTING, { ...ANALYSIS, holes }, 'yards');
  expect(first?.drawn).toBe('The full shot from the longest tee finishes at 1.0 east, 240.0 north.');
  expect(second?.drawn).toBe('');
});
