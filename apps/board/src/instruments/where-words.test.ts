import type { Plan } from '@loopwright/model';
import { expect, test } from 'vitest';
import { namesOf } from '../reading/names.ts';
import { PLAN, ROUTING } from '../reading/two-holes.test-plan.ts';
import { whereWords } from './where-words.ts';

const bare: Plan = { ...PLAN, site: { name: 'Bare', north: 0, bases: [], marks: [], features: [], images: [] } };
const empty = { ...ROUTING, holes: [], loops: [], spare: [] };
const say = (plan: Plan, routing: typeof ROUTING, x: number, y: number) =>
  whereWords({ plan, routing }, namesOf(plan, routing, 'metres'), { x, y });

test('on bare land a place is said east and north', () => {
  expect(say(bare, empty, 120.4, -30)).toBe('120 m east, -30 m north');
});

// 30 east and 40 south of the mark: 50 m away, and 53° east of south is nearest to south-east.
test('a place is said from the nearest thing that has a name', () => {
  const marked: Plan = {
    ...bare,
    site: {
      ...bare.site,
      marks: [
        { id: 'm1', kind: 'green site', at: { x: 100, y: 100 }, verdict: 'natural' },
        { id: 'm2', kind: 'tee site', at: { x: 500, y: 500 }, verdict: 'natural' },
      ],
    },
  };
  expect(say(marked, empty, 130, 60)).toBe('50 m south-east of the green site');
  expect(say(marked, empty, 500.2, 500)).toBe('at the tee site');
});

test('from an outline it is the distance to its edge', () => {
  const square = [
    { x: 0, y: 0 },
    { x: 100, y: 0 },
    { x: 100, y: 100 },
    { x: 0, y: 100 },
  ];
  const bounded: Plan = { ...bare, site: { ...bare.site, boundary: { outlines: [square], inner: [], tolerance: 0 } } };
  expect(say(bounded, empty, 80, 50)).toBe('20 m west of the boundary');
});
