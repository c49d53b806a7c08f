import type { Feature } from '@loopwright/model';
import { expect, test } from 'vitest';
import { checkHoleFeatures } from './features.ts';
import { laidArea, siteOf } from './laid-feature.ts';
import { LIMITS, laidHole } from './laid-hole.ts';

/** Landing area at (0, 228.6); its green has a radius of 12 m. */
const north = laidHole('a', [
  [0, 0],
  [0, 400],
]);
const box = (x: number, y: number, width: number, height: number) =>
  [
    [x, y],
    [x + width, y],
    [x + width, y + height],
    [x, y + height],
  ] as const;

const found = (...features: readonly Feature[]) => checkHoleFeatures(north, siteOf(...features), LIMITS);
const codes = (...features: readonly Feature[]) =>
  found(...features).map(({ code, severity, measured }) => [code, severity, measured]);

test('a line of play over protected ground is measured by how much of it runs over', () => {
  expect(codes(laidArea('protected', box(-20, 100, 40, 30)))).toEqual([['carry-over-feature', 'stop', -30]]);
});

test('ground that may be carried is no finding under the line, only where a ball is to come down', () => {
  expect(codes(laidArea('water', box(-20, 100, 40, 30)))).toEqual([]);
  expect(codes(laidArea('water', box(-10, 218.6, 40, 30)))).toEqual([['landing-on-feature', 'look', -10]]);
});

test.each([
  [19.999, 'look'],
  [20, undefined],
])('a building %f m from the line, 20 m to be kept around it: %s', (apart, severity) => {
  const [finding] = found(laidArea('building', box(apart, 100, 10, 10), 20));
  expect(finding?.severity).toBe(severity);
  if (finding) expect(finding).toMatchObject({ code: 'carry-over-feature', limit: 20, measured: apart, safety: true });
});

test('a green is measured from its edge, a tee from its middle', () => {
  const marsh = laidArea('wetland', box(15, 380, 50, 40), 5);
  // 15 m to the centre less a radius of 12.
  expect(codes(marsh)).toEqual([['green-on-feature', 'look', 3]]);
  expect(codes(laidArea('wetland', box(-5, -5, 40, 30)))).toEqual([['tee-on-feature', 'stop', -5]]);
});

test('trees and parts of the course are never more than a mention', () => {
  expect(codes(laidArea('trees', box(-20, 100, 40, 30)))).toEqual([['carry-over-feature', 'mention', -30]]);
});

test('features that allow everything say nothing', () => {
  expect(
    codes(laidArea('fairway', box(-30, 150, 60, 200)), laidArea('ground unit', box(-300, -300, 900, 900))),
  ).toEqual([]);
});
