import { expect, test } from 'vitest';
import { checkFans } from './fans.ts';
import { LIMITS, laidHole } from './laid-hole.ts';
import type { PairRelation } from './pair-relation.ts';

/** Tee shot straight up for 228.6 m and 18 m of roll; approach from there to 30 m past the green. */
const north = laidHole('a', [
  [0, 0],
  [0, 400],
]);

/** A short hole whose tee stands there, played away from the fan. */
const teeAt = (x: number, y: number) =>
  laidHole('b', [
    [x, y],
    [x + 150, y],
  ]);
const greenAt = (x: number, y: number) =>
  laidHole('b', [
    [x + 150, y],
    [x, y],
  ]);

const found = (code: string, other: ReturnType<typeof laidHole>, from = north, relation: PairRelation = 'other') =>
  checkFans(from, other, relation, LIMITS).find((finding) => finding.code === code);

// At 200 m: tan 10° × 200 = 35.265 m, tan 15° × 200 = 53.590 m.
test.each([
  [29.999, 'stop', 30],
  [30, 'stop', 35.265],
  [35.26, 'stop', 35.265],
  [35.27, 'look', 53.59],
  [49.999, 'look', 53.59],
  [50, 'mention', 53.59],
  [53.58, 'mention', 53.59],
  [53.6, undefined, undefined],
])('a tee 200 m ahead and %f m off the line: %s', (aside, severity, limit) => {
  const finding = found('tee-in-fan', teeAt(aside, 200));
  expect(finding?.severity).toBe(severity);
  expect(finding?.limit).toBe(limit);
  if (finding) expect(finding).toMatchObject({ measured: aside, detail: { shot: 'tee shot', ahead: 200 } });
});

test('far out, 40 m off the line and more is a look even inside the inner angle', () => {
  // tan 10° × 240 = 42.3 m.
  expect(found('tee-in-fan', teeAt(39.999, 240))?.severity).toBe('stop');
  expect(found('tee-in-fan', teeAt(40, 240))?.severity).toBe('look');
});

test('a green is seen like a tee, one on the left like one on the right', () => {
  expect(found('green-in-fan', greenAt(36, 200))?.severity).toBe('look');
  const left = laidHole('b', [
    [-36, 200],
    [-186, 200],
  ]);
  expect(found('tee-in-fan', left)?.severity).toBe('look');
});

test('the tee shot goes on straight past the turn for the drive and its roll', () => {
  const bent = laidHole('a', [
    [0, 0],
    [0, 180],
    [200, 300],
  ]);
  expect(
    found(
      'tee-in-fan',
      laidHole('b', [
        [0, 246],
        [-150, 246],
      ]),
      bent,
    ),
  ).toMatchObject({ severity: 'stop', measured: 0 });
  expect(
    found(
      'tee-in-fan',
      laidHole('b', [
        [0, 247],
        [-150, 247],
      ]),
      bent,
    ),
  ).toBeUndefined();
});

test('where the drive reaches over the corner, the way across it is a line of play', () => {
  // First leg 100 m up, then right: the drive of 228.6 m meets the second leg at x = √(228.6² − 100²) = 205.6.
  const bent = laidHole('a', [
    [0, 0],
    [0, 100],
    [330, 100],
  ]);
  const inCorner = laidHole('b', [
    [103, 50],
    [103, -100],
  ]);
  const finding = found('tee-in-fan', inCorner, bent);
  expect(finding).toMatchObject({ severity: 'stop', detail: { shot: 'cut corner' } });
  // (103, 50) against the line to (205.6, 100): |103 × 100 − 50 × 205.6| ÷ 228.6 = 0.09 m.
  expect(finding?.measured).toBeLessThan(0.1);
});

// A par 3 of 60 + 80 m round a corner: nobody plays it with the driver of 246.6 m.
const bentShort = laidHole('a', [
  [0, 0],
  [0, 60],
  [80, 60],
]);

test.each([
  // Straight on past the turn: the length of the hole and 30 m, 170 m.
  [0, 169.9, 'tee shot'],
  [0, 170.1, undefined],
  // Straight at the green, 100 m away towards (80, 60): 130 m along (0.8, 0.6).
  [103.92, 77.94, 'cut corner'],
  // Beyond it only the approach from the turn reaches.
  [104.08, 78.06, 'approach'],
])('a short hole round a corner reaches (%f, %f): %s', (x, y, shot) => {
  const finding = found(
    'tee-in-fan',
    laidHole('b', [
      [x, y],
      [x + 200, y + 300],
    ]),
    bentShort,
  );
  expect(finding?.detail.shot).toBe(shot);
});

test('over the corner at the green itself the fan ends 30 m past it', () => {
  // First leg 150 m, then 30 m on: √(150² + 30²) = 152.97 m away, well within the drive of 228.6 m.
  const drivable = laidHole('a', [
    [0, 0],
    [0, 150],
    [30, 150],
  ]);
  const past = (metres: number) =>
    laidHole('b', [
      [(30 / 152.97) * metres, (150 / 152.97) * metres],
      [400, 400],
    ]);
  expect(found('tee-in-fan', past(182), drivable)).toMatchObject({ severity: 'stop' });
  expect(found('tee-in-fan', past(230), drivable)).toBeUndefined();
});

test('an approach reaches 30 m past the green', () => {
  expect(found('tee-in-fan', teeAt(0, 430))).toMatchObject({ severity: 'stop', detail: { shot: 'approach' } });
  expect(found('tee-in-fan', teeAt(0, 430.01))).toBeUndefined();
});

// At 160 m of the approach: tan 10° × 160 = 28.2 m; between the angles no more than a look.
test.each([
  [19.999, 'stop'],
  [20, 'look'],
  [29.999, 'look'],
  [30, 'mention'],
  [39.999, 'mention'],
  [40, undefined],
])('the next tee in the approach sector, %f m off its line: %s', (aside, severity) => {
  expect(found('tee-in-fan', teeAt(aside, 228.6 + 160), north, 'next')?.severity).toBe(severity);
});

test('the next tee beside the green but outside the approach sector is no finding, however near', () => {
  // A short approach: 60 m and tan 15° × 60 = 16.1 m.
  const short = laidHole('a', [
    [0, 0],
    [0, 288.7],
  ]);
  expect(found('tee-in-fan', teeAt(17, 288.7), short, 'next')).toBeUndefined();
  expect(found('tee-in-fan', teeAt(15, 288.7), short, 'next')?.severity).toBe('look');
});

test('a landing area in the fan is a look inside the inner angle, else a mention', () => {
  const landing = (aside: number) =>
    laidHole('b', [
      [aside + 228.6, 200],
      [aside - 200, 200],
    ]);
  expect(found('landing-in-fan', landing(35))?.severity).toBe('look');
  expect(found('landing-in-fan', landing(36))?.severity).toBe('mention');
});

test('the green that two holes share is not in the way of either', () => {
  const shared = laidHole(
    'b',
    [
      [150, 390],
      [0, 390],
    ],
    { relations: [{ kind: 'shares its green with', hole: 'a' }] },
  );
  expect(found('green-in-fan', shared)).toBeUndefined();
});
