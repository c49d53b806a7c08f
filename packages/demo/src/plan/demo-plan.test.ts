import {
  closestOnPolyline,
  polylineCrossings,
  polylineLength,
  ringArea,
  ringContains,
  ringIsSimple,
} from '@loopwright/geometry';
import { cardLength, type Hole, holeOf, type Plan, parsePlan, playingOrder } from '@loopwright/model';
import { expect, test } from 'vitest';
import { demoPlan } from './demo-plan.ts';

const plan = demoPlan();

function lineOf(hole: Hole) {
  const { back } = hole.tees;
  if (!back || !hole.green) throw new Error(`${hole.id} has no back tee or no green`);
  return [back, ...hole.turnPoints.map(({ at }) => at), hole.green.centre];
}

function holesInPlay({ routings: [routing] }: Plan): readonly Hole[] {
  const [round] = routing?.rounds ?? [];
  if (!routing || !round) throw new Error('the demo has a routing with a round');
  return playingOrder(routing, round).flatMap((id) => holeOf(routing, id) ?? []);
}

test('the demo is the same on every run', () => {
  expect(demoPlan()).toEqual(plan);
});

test('a board file of the demo is read without a single note', () => {
  const parsed = parsePlan(JSON.parse(JSON.stringify(demoPlan('ab'.repeat(32)))));
  expect(parsed).toEqual({ kind: 'plan', plan: demoPlan('ab'.repeat(32)), notes: [] });
});

test('the site says that it is invented', () => {
  expect(plan.site.note).toMatch(/invented/i);
});

test('without a stored picture the plan shows none', () => {
  expect(plan.site.images).toEqual([]);
});

test('two nines of nine holes and one spare', () => {
  const [routing] = plan.routings;
  expect(routing?.loops.map(({ holes }) => holes.length)).toEqual([9, 9]);
  expect(routing?.spare).toEqual(['whin']);
});

test('from the back it is a course of ordinary length', () => {
  const yards = holesInPlay(plan).reduce((sum, hole) => sum + cardLength(polylineLength(lineOf(hole)), 'yards'), 0);
  expect(yards).toBeGreaterThan(6400);
  expect(yards).toBeLessThan(6900);
});

// 31 real courses mapped in open data: no two centrelines of a course cross in any of them.
test('no two lines of play cross', () => {
  const lines = plan.routings.flatMap(({ holes }) => holes.map(lineOf));
  const crossings = lines.flatMap((line, index) =>
    lines.slice(index + 1).flatMap((other) => polylineCrossings(line, other)),
  );
  expect(crossings).toEqual([]);
});

test('the boundary is one plain outline of a usual size, with every tee, turn and green inside', () => {
  const [outline] = plan.site.boundary?.outlines ?? [];
  if (!outline) throw new Error('the demo has a boundary');
  expect(ringIsSimple(outline)).toBe(true);
  // 25 mapped courses: 33–158 ha.
  expect(ringArea(outline) / 10_000).toBeGreaterThan(70);
  expect(ringArea(outline) / 10_000).toBeLessThan(95);
  for (const hole of holesInPlay(plan)) {
    for (const point of [...lineOf(hole), ...Object.values(hole.tees)]) expect(ringContains(outline, point)).toBe(true);
  }
});

test('shorter tees lie ahead of the back tee and near the line', () => {
  for (const hole of holesInPlay(plan)) {
    const line = lineOf(hole);
    const ahead = ['back', 'middle', 'forward'].flatMap((set) => {
      const tee = hole.tees[set];
      return tee ? [closestOnPolyline(tee, line)] : [];
    });
    expect(ahead.map(({ along }) => along)).toEqual(ahead.map(({ along }) => along).sort((a, b) => a - b));
    for (const { distance } of ahead) expect(distance).toBeLessThan(15);
  }
});
