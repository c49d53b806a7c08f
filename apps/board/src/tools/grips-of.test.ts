import { openAnalysis } from '@loopwright/analysis';
import { distanceBetween } from '@loopwright/geometry';
import type { Hole } from '@loopwright/model';
import { expect, test } from 'vitest';
import { PLAN } from '../reading/two-holes.test-plan.ts';
import type { Grip } from './grip.ts';
import { gripsOf } from './grips-of.ts';

/** Hole 1 of the sample goes 365.76 m north from the origin; its walk leads to the second tee. */
function gripsWith(over: Partial<Hole>, scale = 1, numbers: readonly { x: number; y: number }[] = []) {
  const [routing] = PLAN.routings;
  const first = routing?.holes.find(({ id }) => id === 'h1');
  if (!routing || !first) throw new Error('the sample has no first hole');
  const hole = { ...first, ...over };
  const holes = routing.holes.map((each) => (each === first ? hole : each));
  const analysis = openAnalysis().analyse({ ...PLAN, routings: [{ ...routing, holes }] }, routing.id);
  const figures = analysis.holes.get('h1');
  if (!figures) throw new Error('no figures');
  return { hole, grips: gripsOf({ hole, figures, walks: analysis.walks, teeSet: 'back', scale, numbers }) };
}
const of = (grips: readonly Grip[], kind: Grip['kind']) => grips.filter((grip) => grip.kind === kind);

test('a straight hole has one grip in the middle of its line, for the first turn point', () => {
  const { grips } = gripsWith({});
  expect(of(grips, 'leg')).toEqual([{ kind: 'leg', place: 0, at: { x: 0, y: 182.88 } }]);
});

test('the grip of a leg makes way for the number of the hole', () => {
  const number = { x: 0, y: 182.88 };
  const [leg] = of(gripsWith({}, 1, [number]).grips, 'leg');
  expect(leg && distanceBetween(leg.at, number)).toBeGreaterThanOrEqual(24);
});

test('each leg counts the turn points before it; a hole with as many as it can has no more grips', () => {
  const turn = (id: string, y: number) => ({ id, at: { x: 40, y } });
  const one = gripsWith({ turnPoints: [turn('t1', 180)] }).grips;
  expect(of(one, 'leg').map((grip) => 'place' in grip && grip.place)).toEqual([0, 1]);
  const three = gripsWith({ turnPoints: [turn('t1', 90), turn('t2', 180), turn('t3', 270)] }).grips;
  expect(of(three, 'leg')).toEqual([]);
});

test('beyond the tee is behind it, beyond the green is past it, both on the line', () => {
  const beyond = of(gripsWith({}).grips, 'beyond');
  expect(beyond.map((grip) => 'end' in grip && grip.end)).toEqual(['tee:back', 'green']);
  expect(beyond[0]?.at.y).toBeLessThan(-20);
  expect(beyond[1]?.at.y).toBeGreaterThan(365.76 + 20);
  expect(beyond.map(({ at }) => at.x)).toEqual([0, 0]);
});

test('nothing to take hold of lies closer than 24 pixels to another, from near or far', () => {
  for (const scale of [0.25, 0.5, 1, 4, 12]) {
    const { grips } = gripsWith({ waypoints: [{ x: 60, y: 380 }] }, scale);
    for (const [index, one] of grips.entries()) {
      for (const other of grips.slice(index + 1)) {
        expect(distanceBetween(one.at, other.at) * scale).toBeGreaterThanOrEqual(24 - 1e-9);
      }
    }
  }
});

test('from far away a hole is too small to be shaped', () => {
  expect(gripsWith({}, 0.05).grips).toEqual([]);
});

test('a walk has a grip for each of its points, and one between', () => {
  const { grips } = gripsWith({ waypoints: [{ x: 200, y: 380 }] });
  expect(of(grips, 'waypoint')).toEqual([{ kind: 'waypoint', index: 0, at: { x: 200, y: 380 } }]);
  expect(of(grips, 'walk leg').map((grip) => 'index' in grip && grip.index)).toEqual([0, 1]);
});
