import { expect, test } from 'vitest';
import { LIMITS, laidHole } from './laid-hole.ts';
import { checkLandings, checkLandingsApart } from './landings.ts';

/** Its one landing area is 250 yd from the tee, at (0, 228.6). */
const north = laidHole('a', [
  [0, 0],
  [0, 400],
]);
const AT = 228.6;

const severityOf = (code: string, other: ReturnType<typeof laidHole>) =>
  checkLandings(north, other, LIMITS).find((finding) => finding.code === code);

test.each([
  [39.999, 'stop'],
  [40, 'look'],
  [59.999, 'look'],
  [60, 'mention'],
  [74.999, 'mention'],
  [75, undefined],
])('a tee %f m from the landing area: %s', (apart, severity) => {
  const found = severityOf(
    'landing-tee',
    laidHole('b', [
      [apart, AT],
      [apart + 150, AT],
    ]),
  );
  expect(found?.severity).toBe(severity);
  if (found) expect(found).toMatchObject({ key: 'landing-tee|a|b', measured: apart, holes: ['a', 'b'] });
});

test.each([
  [39.999, 'stop'],
  [40, 'look'],
  [59.999, 'look'],
  [60, 'mention'],
  [75, undefined],
])('a green %f m from the landing area: %s', (apart, severity) => {
  expect(
    severityOf(
      'landing-green',
      laidHole('b', [
        [apart + 150, AT],
        [apart, AT],
      ]),
    )?.severity,
  ).toBe(severity);
});

test.each([
  [34.999, 'stop'],
  [35, 'look'],
  [45.999, 'look'],
  [46, 'mention'],
  [60, undefined],
])('a line of play %f m from the landing area: %s', (apart, severity) => {
  const passing = laidHole('b', [
    [apart, AT - 100],
    [apart, AT + 100],
  ]);
  expect(severityOf('landing-line', passing)?.severity).toBe(severity);
});

test.each([
  [44.999, 'stop'],
  [45, 'look'],
  [60, 'mention'],
  [75, undefined],
])('landing areas %f m apart: %s', (apart, severity) => {
  const beside = laidHole('b', [
    [apart, 0],
    [apart, 400],
  ]);
  expect(checkLandingsApart(north, beside, LIMITS)[0]?.severity).toBe(severity);
});

test('a hole played in one shot has no landing area', () => {
  expect(
    checkLandings(
      laidHole('b', [
        [10, AT],
        [160, AT],
      ]),
      north,
      LIMITS,
    ),
  ).toEqual([]);
});

test('what follows from a stated relation is not counted again', () => {
  const shared = (kind: 'shares its green with' | 'shares fairway with') => ({ relations: [{ kind, hole: 'a' }] });
  const green = laidHole(
    'b',
    [
      [180, AT],
      [30, AT],
    ],
    shared('shares its green with'),
  );
  expect(severityOf('landing-green', green)).toBeUndefined();
  const fairway = laidHole(
    'b',
    [
      [30, 0],
      [30, 400],
    ],
    shared('shares fairway with'),
  );
  expect(severityOf('landing-line', fairway)).toBeUndefined();
  expect(checkLandingsApart(north, fairway, LIMITS)).toEqual([]);
});
