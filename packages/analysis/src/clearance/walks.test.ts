import { polylineLength } from '@loopwright/geometry';
import { expect, test } from 'vitest';
import type { CrossingPlace, WalkCrossing, WalkFigures } from '../figures.ts';
import { laidArea, siteOf } from './laid-feature.ts';
import { LIMITS, laidHole } from './laid-hole.ts';
import { checkWalkFeatures } from './walk-features.ts';
import { checkWalkPast } from './walks.ts';

const north = laidHole('a', [
  [0, 0],
  [0, 400],
]);
const walk = (places: readonly (readonly [number, number])[]): WalkFigures => {
  const path = places.map(([x, y]) => ({ x, y }));
  return {
    key: 'c>d',
    loop: 'l',
    from: { hole: 'c' },
    to: { hole: 'd' },
    path,
    distance: polylineLength(path),
    walkBack: 0,
    time: 0,
    crossings: [],
  };
};

test.each([
  [19.999, 'stop'],
  [20, 'look'],
  [40, 'mention'],
])('a walk that passes a landing area at %f m: %s', (apart, severity) => {
  const [finding] = checkWalkPast(
    walk([
      [apart, 228.6],
      [apart + 100, 228.6],
    ]),
    north,
    LIMITS,
  );
  expect(finding).toMatchObject({ code: 'walk-landing', severity, measured: apart, holes: ['a', 'c', 'd'] });
});

test('further off, a walk inside the shot fan is mentioned by how long it is inside', () => {
  // From (52, 228.6) outward: the fan is tan 15° × 228.6 = 61.3 m wide there; too short a stay to mention.
  expect(
    checkWalkPast(
      walk([
        [52, 228.6],
        [152, 228.6],
      ]),
      north,
      LIMITS,
    ),
  ).toEqual([]);
  const [finding] = checkWalkPast(
    walk([
      [20, 120],
      [20, 160],
    ]),
    north,
    LIMITS,
  );
  expect(finding).toMatchObject({ code: 'walk-in-fan', severity: 'mention', measured: 40, worse: 'more' });
});

test("a hole's own walks, and walks that cross its line and are told so, are not told again", () => {
  const own = {
    ...walk([
      [10, 228.6],
      [100, 228.6],
    ]),
    to: { hole: 'a' },
  };
  expect(checkWalkPast(own, north, LIMITS)).toEqual([]);
  const what = { kind: 'line of play', hole: 'a', where: 'in play', ahead: 228.6 } as const;
  const across = {
    ...walk([
      [-50, 228.6],
      [50, 228.6],
    ]),
    crossings: [{ at: { x: 0, y: 228.6 }, what }],
  };
  expect(checkWalkPast(across, north, LIMITS)).toEqual([]);
});

const crossingAt = (ahead: number, where: CrossingPlace): WalkCrossing => ({
  at: { x: 0, y: ahead },
  what: { kind: 'line of play', hole: 'a', where, ahead },
});

// Round behind the green at 420 m, or across right in front of the tee, and then to within 15 m of the landing area.
test.each([
  { ahead: 420, where: 'behind' },
  { ahead: 10, where: 'ahead of the tee' },
] as const)('a walk that crosses $where hides no graver pass of the landing area', ({ ahead, where }) => {
  const round = walk([
    [-30, ahead],
    [60, ahead],
    [15, 228.6],
  ]);
  const [finding] = checkWalkPast({ ...round, crossings: [crossingAt(ahead, where)] }, north, LIMITS);
  expect(finding).toMatchObject({ code: 'walk-landing', severity: 'stop', measured: 15 });
});

test('a walk of no length, to a tee that stands on the green before it, passes nothing', () => {
  const none = walk([
    [15, 228.6],
    [15, 228.6],
  ]);
  expect(checkWalkPast(none, north, LIMITS)).toEqual([]);
});

test('a walk over ground that may not be walked is a look, within its buffer a mention', () => {
  const reserve = laidArea(
    'protected',
    [
      [0, 0],
      [30, 0],
      [30, 30],
      [0, 30],
    ],
    10,
  );
  const over = checkWalkFeatures(
    walk([
      [-20, 15],
      [60, 15],
    ]),
    siteOf(reserve),
    LIMITS,
  );
  expect(over.map(({ code, severity, measured }) => [code, severity, measured])).toEqual([
    ['walk-over-feature', 'look', -30],
  ]);
  const past = checkWalkFeatures(
    walk([
      [-20, 36],
      [60, 36],
    ]),
    siteOf(reserve),
    LIMITS,
  );
  expect(past[0]).toMatchObject({ severity: 'mention', measured: 6, limit: 10 });
  expect(
    checkWalkFeatures(
      walk([
        [-20, 41],
        [60, 41],
      ]),
      siteOf(reserve),
      LIMITS,
    ),
  ).toEqual([]);
});
