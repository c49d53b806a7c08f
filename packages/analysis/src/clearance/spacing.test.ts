import { expect, test } from 'vitest';
import { LIMITS, laidHole } from './laid-hole.ts';
import { checkSpacing } from './spacing.ts';

const north = laidHole('a', [
  [0, 0],
  [0, 400],
]);
const sameWay = (apart: number) =>
  laidHole('b', [
    [apart, 0],
    [apart, 400],
  ]);
const opposed = (apart: number) =>
  laidHole('b', [
    [apart, 400],
    [apart, 0],
  ]);

test.each([
  [39.999, 'stop'],
  [40, 'look'],
  [49.999, 'look'],
  [50, 'mention'],
  [59.999, 'mention'],
  [60, undefined],
])('holes played the same way %f m apart: %s', (apart, severity) => {
  const [finding] = checkSpacing(north, sameWay(apart), 'other', LIMITS);
  expect(finding?.severity).toBe(severity);
  if (finding)
    expect(finding).toMatchObject({ code: 'holes-alongside', measured: apart, detail: { play: 'same way' } });
});

// 5 m more are asked of opposed play, but for the stop.
test.each([
  [39.999, 'stop'],
  [40, 'look'],
  [54.999, 'look'],
  [55, 'mention'],
  [64.999, 'mention'],
  [65, undefined],
])('holes played towards each other %f m apart: %s', (apart, severity) => {
  const [finding] = checkSpacing(north, opposed(apart), 'other', LIMITS);
  expect(finding?.severity).toBe(severity);
  // From 60 m off the tee of a to 60 m off the tee of b: 60, 70, … 340.
  if (finding) expect(finding.detail).toMatchObject({ play: 'opposed', stretch: 290 });
});

test.each([
  [34.999, 'stop'],
  [35, 'look'],
  [44.999, 'look'],
  [45, 'mention'],
  [60, undefined],
])('consecutive holes have limits of their own: %f m, %s', (apart, severity) => {
  expect(checkSpacing(north, sameWay(apart), 'next', LIMITS)[0]?.severity).toBe(severity);
});

test('it is the middle spacing that counts, and both places are told', () => {
  // From 20 m apart at y = 0 to 60 m at y = 400: a tenth of the way up per metre, 46 m at y = 260... about 43 in the middle.
  const spreading = laidHole('b', [
    [20, 0],
    [60, 400],
  ]);
  const [finding] = checkSpacing(north, spreading, 'other', LIMITS);
  // At a right angle to b from (0, y): (20 + y ÷ 10) ÷ √1.01. The middle of y = 70 … 390 is 230.
  expect(finding?.measured).toBeCloseTo(43 / Math.sqrt(1.01), 1);
  expect(finding?.place.type).toBe('line');
});

test.each([
  ['24°', 0.4452, true],
  ['26°', 0.4877, false],
])('headings %s apart: alongside is %s', (_, tangent, expected) => {
  const turned = laidHole('b', [
    [-60, 0],
    [-60 + 400 * tangent, 400],
  ]);
  expect(checkSpacing(north, turned, 'other', LIMITS).length > 0).toBe(expected);
});

test('under 100 m side by side are not alongside; the first 60 m off a tee do not count', () => {
  const shortBy = laidHole('b', [
    [30, 250],
    [30, 700],
  ]);
  // Beyond 60 m off b's tee: y = 310 … 390, nine places.
  expect(checkSpacing(north, shortBy, 'other', LIMITS)).toEqual([]);
  expect(
    checkSpacing(
      north,
      laidHole('b', [
        [30, 230],
        [30, 700],
      ]),
      'other',
      LIMITS,
    ),
  ).toHaveLength(1);
});

test('a shared fairway is shown as stated', () => {
  const shared = laidHole(
    'b',
    [
      [30, 0],
      [30, 400],
    ],
    { relations: [{ kind: 'shares fairway with', hole: 'a' }] },
  );
  const [finding] = checkSpacing(north, shared, 'other', LIMITS);
  expect(finding).toMatchObject({ severity: 'mention', measured: 30, detail: { stated: 'shares fairway with' } });
});
