import { expect, test } from 'vitest';
import { findingsOf, laidPlan } from '../rhythm/laid-round.ts';

const headed = (...headings: readonly number[]) => laidPlan(headings.map((heading) => ({ heading })));
const said = (code: Parameters<typeof findingsOf>[0], plan: ReturnType<typeof laidPlan>) =>
  findingsOf(code, plan).map(({ severity, measured, holes }) => [severity, measured, holes.length]);

/** Eighteen holes that use so many of the eight directions. */
const using = (sectors: number) => headed(...Array.from({ length: 18 }, (_, i) => (i % sectors) * 45 + 1));

test.each([
  [4, 'look'],
  [5, 'mention'],
  [6, undefined],
])('eighteen holes in %i of eight directions: %s', (sectors, severity) => {
  const [finding] = findingsOf('directions-used', using(sectors));
  expect(finding?.severity).toBe(severity);
  if (finding) expect(finding).toMatchObject({ measured: sectors, unit: 'sectors', safety: false });
});

test('nine holes have fewer directions and are not judged', () => {
  expect(findingsOf('directions-used', headed(0, 180, 0, 180, 0, 180, 0, 180, 0))).toEqual([]);
});

test('three in a row within 45° are a mention; within 30° they count as a run', () => {
  expect(said('three-one-way', headed(0, 20, 44, 180))).toEqual([['mention', 3, 3]]);
  expect(said('three-one-way', headed(0, 20, 46, 180))).toEqual([]);
  expect(said('runs-one-way', headed(0, 10, 29, 180))).toEqual([['mention', 1, 3]]);
  expect(said('three-one-way', headed(0, 10, 29, 180))).toEqual([]);
  expect(said('runs-one-way', headed(0, 10, 31, 180))).toEqual([]);
});

test('two runs of three in a round are a look', () => {
  expect(said('runs-one-way', headed(0, 10, 20, 180, 90, 95, 100))).toEqual([['look', 2, 6]]);
});

test.each([
  [3, undefined],
  [4, 'mention'],
  [5, 'mention'],
  [6, 'look'],
])('%i holes that run as the one before: %s', (pairs, severity) => {
  const headings = Array.from({ length: pairs }, (_, i) => [i * 90, i * 90 + 19]).flat();
  const [finding] = findingsOf('next-one-way', headed(...headings));
  expect(finding?.severity).toBe(severity);
  if (finding) expect(finding.measured).toBe(pairs);
});

test('three side by side played the same way are a mention; with the middle one turned round they are not', () => {
  const beside = (...headings: readonly number[]) =>
    laidPlan(headings.map((heading, i) => ({ heading, tee: [i * 90, heading === 0 ? 0 : 350] as const })));
  expect(said('side-by-side-one-way', beside(0, 0, 0))).toEqual([['mention', 3, 3]]);
  expect(said('side-by-side-one-way', beside(0, 180, 0))).toEqual([]);
  expect(
    said('side-by-side-one-way', laidPlan([0, 101, 202].map((x) => ({ heading: 0, tee: [x, 0] as const })))),
  ).toEqual([]);
});

const threes = (...sketches: readonly (readonly [heading: number, length: number])[]) =>
  laidPlan(sketches.flatMap(([heading, length]) => [{ par: 4 as const }, { par: 3 as const, heading, length }]));

test('par 3s are alike only when length and direction both are: two of one length are ordinary', () => {
  expect(findingsOf('par-threes-alike', threes([0, 160], [90, 160]))).toEqual([]);
  expect(findingsOf('par-threes-alike', threes([0, 160], [0, 168]))).toEqual([]);
  const [alike] = findingsOf('par-threes-alike', threes([0, 160], [29, 167.9]));
  expect(alike).toMatchObject({ severity: 'mention', unit: 'm', detail: { apartDegrees: 29 } });
  expect(alike?.measured).toBeCloseTo(7.9, 2);
  expect(findingsOf('par-threes-alike', threes([0, 160], [31, 160]))).toEqual([]);
});

test.each([
  [[0, 90, 180], undefined],
  [[0, 10, 180], undefined],
  [[0, 19, 38], 'mention'],
  [[0, 5, 10, 90], 'mention'],
  [[0, 5, 10, 15], 'look'],
])('par 3s headed %j: %s', (headings, severity) => {
  const plan = threes(...headings.map((heading, i) => [heading, 130 + 20 * i] as const));
  expect(findingsOf('par-threes-one-way', plan)[0]?.severity).toBe(severity);
});
