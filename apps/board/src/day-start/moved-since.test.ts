import { expect, test } from 'vitest';
import { PLAN, ROUTING } from '../reading/two-holes.test-plan.ts';
import { holesMovedSince, siteMovedSince } from './moved-since.ts';

const copy = <Value>(value: Value): Value => JSON.parse(JSON.stringify(value));
const at = (x: number, y: number) => ({ x, y });

test('on the morning itself nothing has moved, however the plan was read again', () => {
  expect(holesMovedSince(ROUTING, copy(ROUTING))).toEqual([]);
  expect(siteMovedSince(PLAN.site, copy(PLAN.site))).toEqual([]);
});

test('a hole whose green moved and one that was taken off are shown as they lay; a new one is not', () => {
  const holes = ROUTING.holes.map((hole) =>
    hole.id === 'h1' && hole.green
      ? { ...hole, green: { ...hole.green, centre: at(20, 365.76) } }
      : hole.id === 'h2'
        ? { ...hole, seat: { in: 'removed', key: 'a' } as const }
        : hole,
  );
  const now = { ...ROUTING, holes: [...holes, { ...ROUTING.holes[0], id: 'z9' }] };
  expect(holesMovedSince(ROUTING, copy(now) as typeof ROUTING).map(({ id }) => id)).toEqual(['h1', 'h2']);
});

test('a renumbered hole, and one that was only judged, lie where they lay', () => {
  const holes = ROUTING.holes.map((hole) => ({ ...hole, verdict: 'weak', name: 'Quarry' }) as const);
  expect(holesMovedSince(ROUTING, { ...ROUTING, holes })).toEqual([]);
});

test('what moved on the site is shown by its outline', () => {
  const ring = [at(0, 0), at(9, 0), at(9, 9)];
  const wood = {
    id: 'f1',
    kind: 'trees',
    geometry: { type: 'area', rings: [ring] },
    allows: { carry: false, walk: true, mow: false, build: false },
    buffer: 0,
  } as const;
  const mark = { id: 'm1', kind: 'green site', at: at(5, 5), verdict: 'natural' } as const;
  const then = { ...PLAN.site, features: [wood], marks: [mark] };
  const now = {
    ...then,
    features: [{ ...wood, geometry: { type: 'area', rings: [[...ring, at(0, 9)]] } } as const],
    marks: [],
  };
  expect(siteMovedSince(then, now)).toEqual([
    { key: 'feature f1 0', points: ring, closed: true },
    { key: 'mark m1', points: [at(5, 5)], closed: false },
  ]);
  expect(siteMovedSince(then, { ...then, features: [{ ...wood, buffer: 9 }] })).toEqual([]);
});
