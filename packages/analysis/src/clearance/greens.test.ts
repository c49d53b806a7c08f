import { expect, test } from 'vitest';
import { checkGreenAndTees, checkGreensApart } from './greens.ts';
import { LIMITS, laidHole } from './laid-hole.ts';

const north = laidHole('a', [
  [0, 0],
  [0, 400],
]);
const greenAt = (apart: number, relations: Parameters<typeof laidHole>[2] = {}) =>
  laidHole(
    'b',
    [
      [apart + 150, 400],
      [apart, 400],
    ],
    relations,
  );
const teeAt = (apart: number) =>
  laidHole('b', [
    [apart, 400],
    [apart + 150, 400],
  ]);

test.each([
  [29.999, 'stop'],
  [30, 'look'],
  [39.999, 'look'],
  [40, 'mention'],
  [50, undefined],
])('greens %f m apart: %s', (apart, severity) => {
  expect(checkGreensApart(north, greenAt(apart), LIMITS)[0]?.severity).toBe(severity);
});

test('a shared green is shown as stated, and is still a matter of safety', () => {
  const shared = greenAt(5, { relations: [{ kind: 'shares its green with', hole: 'a' }] });
  const [finding] = checkGreensApart(north, shared, LIMITS);
  expect(finding).toMatchObject({ severity: 'mention', safety: true, detail: { stated: 'shares its green with' } });
});

test.each([
  [29.999, 'stop'],
  [30, 'look'],
  [40, 'mention'],
  [50, undefined],
])('a tee that is not the next, %f m from the green: %s', (apart, severity) => {
  const [finding] = checkGreenAndTees(north, teeAt(apart), 'other', LIMITS);
  expect(finding?.severity).toBe(severity);
  if (finding) expect(finding.code).toBe('green-tee');
});

test.each([
  [14.999, 'stop'],
  [15, 'look'],
  [20, 'mention'],
  [30, undefined],
])('the next tee, %f m from the green: %s', (apart, severity) => {
  const [finding] = checkGreenAndTees(north, teeAt(apart), 'next', LIMITS);
  expect(finding?.severity).toBe(severity);
  if (finding) expect(finding.code).toBe('green-next-tee');
});
