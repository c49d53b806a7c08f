import { expect, test } from 'vitest';
import { checkInCorridor } from './in-corridor.ts';
import { laidHole } from './laid-hole.ts';

/** Half-widths 23 m at the tee, 46 m at the landing area (228.6 m), 30 m at the green (400 m). */
const north = laidHole('a', [
  [0, 0],
  [0, 400],
]);

test.each([
  [0, 22.999, true],
  [0, 23, false],
  [114.3, 34.499, true],
  [114.3, 34.5, false],
  [228.6, 45.999, true],
  [228.6, 46, false],
  [400, 29.999, true],
  [400, 30, false],
])('a tee level with %f m and %f m off the line is inside: %s', (along, aside, inside) => {
  const findings = checkInCorridor(
    north,
    laidHole('b', [
      [aside, along],
      [aside + 150, along],
    ]),
    'other',
  );
  expect(findings.map(({ code, severity }) => [code, severity])).toEqual(
    inside ? [['tee-in-corridor', 'mention']] : [],
  );
});

test('a landing area inside is a look, a green a mention', () => {
  const crossing = laidHole('b', [
    [-188.6, 200],
    [40, 200],
    [260, 320],
  ]);
  const [landing] = checkInCorridor(north, crossing, 'other');
  expect(landing).toMatchObject({ code: 'landing-in-corridor', severity: 'look', measured: 40 });
  const [green] = checkInCorridor(
    north,
    laidHole('b', [
      [170, 200],
      [20, 200],
    ]),
    'other',
  );
  expect(green).toMatchObject({
    code: 'green-in-corridor',
    severity: 'mention',
    measured: 20,
    setting: 'corridor-landing',
  });
});

test('the next tee beside the end of the corridor is left to its own checks; overlap is never flagged', () => {
  expect(
    checkInCorridor(
      north,
      laidHole('b', [
        [20, 390],
        [170, 390],
      ]),
      'next',
    ),
  ).toEqual([]);
  expect(
    checkInCorridor(
      north,
      laidHole('b', [
        [70, -20],
        [70, 180],
      ]),
      'other',
    ),
  ).toEqual([]);
});

// Along (0, 0), (0, 228.6), then east: the outside of the bend is no gap. At the turn the landing area lies: 46 m wide.
test.each([
  [30, 45.9],
  [32, 46.1],
])('a tee %f m west and north of the turn is %f m from it', (out, apart) => {
  const bent = laidHole('a', [
    [0, 0],
    [0, 228.6],
    [170, 228.6],
  ]);
  const tee: readonly [number, number] = [-out, 228.6 + Math.sqrt(apart ** 2 - out ** 2)];
  const findings = checkInCorridor(bent, laidHole('b', [tee, [-out - 150, tee[1]]]), 'other');
  expect(findings.map(({ code }) => code)).toEqual(apart < 46 ? ['tee-in-corridor'] : []);
});
