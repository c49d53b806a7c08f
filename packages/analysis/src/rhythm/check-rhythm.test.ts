import { expect, test } from 'vitest';
import { findingsOf, laidPlan, ofPars } from './laid-round.ts';

const said = (code: Parameters<typeof findingsOf>[0], plan: ReturnType<typeof laidPlan>) =>
  findingsOf(code, plan).map(({ severity, measured }) => [severity, measured]);

test.each([
  [3, []],
  [4, [['mention', 4]]],
  [5, [['look', 5]]],
])('a run of %i par 4s', (run, expected) => {
  const pars = [3, ...Array.from({ length: run }, () => 4 as const), 5, 3, 4] as const;
  expect(said('par-run', laidPlan(ofPars(...pars)))).toEqual(expected);
});

test('par 3s that follow each other are a mention once, a look twice; par 5s alike', () => {
  expect(said('par-threes-in-a-row', laidPlan(ofPars(4, 3, 3, 4)))).toEqual([['mention', 1]]);
  expect(said('par-threes-in-a-row', laidPlan(ofPars(4, 3, 3, 4, 3, 3, 4)))).toEqual([['look', 2]]);
  expect(said('par-fives-in-a-row', laidPlan(ofPars(4, 5, 5, 3)))).toEqual([['mention', 1]]);
  expect(said('par-fives-in-a-row', laidPlan(ofPars(4, 5, 4, 5)))).toEqual([]);
});

test.each([
  [1, 'par-three-early', 'mention'],
  [5, 'par-three-late', undefined],
  [6, 'par-three-late', 'mention'],
  [7, 'par-three-late', 'look'],
] as const)('first par 3 at hole %i: %s %s', (at, code, severity) => {
  const pars = Array.from({ length: 9 }, (_, i) => (i === at - 1 ? 3 : i % 2 === 0 ? 4 : 5) as 3 | 4 | 5);
  expect(findingsOf(code, laidPlan(ofPars(...pars)))[0]?.severity).toBe(severity);
});

test('a par 3 as the last hole of the round is a mention, as the last of its first loop it is not', () => {
  const nine = ofPars(4, 5, 4, 3, 4, 5, 4, 4, 3);
  expect(said('par-three-last', laidPlan([...nine, ...ofPars(4, 3, 4, 5)]))).toEqual([]);
  expect(said('par-three-last', laidPlan(nine))).toEqual([['mention', 1]]);
});

// 165 yd = 150.876 m; 500 yd = 457.2 m.
test.each([
  ['long-par-three-early', 3, 150.8, 2, 0],
  ['long-par-three-early', 3, 151, 2, 1],
  ['long-par-three-early', 3, 151, 5, 0],
  ['reachable-par-five-early', 5, 457, 4, 1],
  ['reachable-par-five-early', 5, 458, 4, 0],
  ['reachable-par-five-early', 5, 457, 5, 0],
] as const)('%s: par %i of %f m at hole %i gives %i', (code, par, length, at, count) => {
  const sketches = Array.from({ length: 9 }, (_, i) => (i === at - 1 ? { par, length } : {}));
  expect(findingsOf(code, laidPlan(sketches))).toHaveLength(count);
});

test('short holes with one between are close together, with two they are not; par 3s in a row are told elsewhere', () => {
  expect(said('short-holes-close', laidPlan(ofPars(4, 3, 4, 3, 4)))).toEqual([['mention', 1]]);
  expect(said('short-holes-close', laidPlan(ofPars(4, 3, 4, 5, 3)))).toEqual([]);
  expect(said('short-holes-close', laidPlan(ofPars(4, 3, 3, 4)))).toEqual([]);
  expect(said('short-holes-close', laidPlan([{}, { par: 3 }, { par: 4, length: 240 }, {}]))).toEqual([['mention', 0]]);
});

test('one club into three par 3s is a mention', () => {
  // Of a driver of 250 yd (228.6 m), a 5 iron is 0.73: 166.9 m; a 7 iron 0.64: 146.3 m.
  const threes = (...lengths: readonly number[]) =>
    laidPlan(lengths.flatMap((length) => [{}, { par: 3 as const, length }]));
  const [same] = findingsOf('same-club-par-threes', threes(165, 167, 168, 146));
  expect(same).toMatchObject({ severity: 'mention', measured: 3, detail: { club: '5 iron' } });
  expect(findingsOf('same-club-par-threes', threes(165, 167, 146, 130))).toEqual([]);
});

test('one club for three approaches in a row is a mention; a par 3 between does not break the row', () => {
  // Left after a drive of 228.6 m: 146.4 m, a 7 iron.
  const [same] = findingsOf('same-approach', laidPlan([{ length: 375 }, { length: 375 }, { par: 3 }, { length: 375 }]));
  expect(same).toMatchObject({ severity: 'mention', measured: 3, detail: { club: '7 iron' } });
  expect(findingsOf('same-approach', laidPlan([{ length: 375 }, { length: 420 }, { length: 375 }]))).toEqual([]);
});

test.each([
  [6, 0, 'look'],
  [5, 0, undefined],
  [8, 1, 'mention'],
  [7, 1, 'mention'],
  [6, 2, undefined],
])('%i bends left and %i right: %s', (left, right, severity) => {
  const bends = [
    ...Array.from({ length: left }, () => 'left' as const),
    ...Array.from({ length: right }, () => 'right' as const),
  ];
  expect(findingsOf('bends-one-way', laidPlan(bends.map((bend) => ({ bend }))))[0]?.severity).toBe(severity);
});

test.each([
  [29.9, 'look'],
  [30, 'mention'],
  [39.9, 'mention'],
  [40, undefined],
])('par 3s that differ by %f m: %s', (spread, severity) => {
  const threes = [150, 160, 150 + spread].flatMap((length) => [{}, { par: 3 as const, length }]);
  expect(findingsOf('par-three-range', laidPlan(threes))[0]?.severity).toBe(severity);
});

test('five par 3s of 200 m make the card look longer than the other holes are', () => {
  const threes = (length: number) =>
    laidPlan(Array.from({ length: 5 }, () => [{}, { par: 3 as const, length }]).flat());
  // 5 × (200 − 165) = 175 m.
  expect(findingsOf('par-threes-hide-length', threes(200))[0]).toMatchObject({
    measured: 175,
    detail: { way: 'longer' },
  });
  expect(findingsOf('par-threes-hide-length', threes(130))[0]).toMatchObject({
    measured: 175,
    detail: { way: 'shorter' },
  });
  expect(findingsOf('par-threes-hide-length', threes(190))).toEqual([]);
});

test('loops are compared in par and length', () => {
  const loops = (...pars: readonly (3 | 4 | 5)[]) => laidPlan(ofPars(...pars), 3);
  expect(said('loop-par-apart', loops(4, 3, 4, 4, 4, 4))).toEqual([]);
  expect(said('loop-par-apart', loops(4, 3, 4, 4, 5, 4))).toEqual([['mention', 2]]);
  expect(said('loop-par-apart', loops(3, 3, 4, 4, 5, 4))).toEqual([['look', 3]]);
  const lengths = (extra: number) => laidPlan([{}, {}, {}, {}, {}, { length: 350 + extra }], 3);
  expect(said('loop-length-apart', lengths(250))).toEqual([]);
  expect(said('loop-length-apart', lengths(251))).toEqual([['mention', 251]]);
  expect(said('loop-length-apart', lengths(451))).toEqual([['look', 451]]);
});

test('the last green far from the first tee; an earlier loop that ends far from it', () => {
  const round = (nine: number, end: number) =>
    laidPlan([{ tee: [0, 0] }, { tee: [nine, 350], heading: 180 }, {}, { tee: [end, 350], heading: 180 }], 2);
  expect(said('last-to-first', round(0, 200))).toEqual([]);
  expect(said('last-to-first', round(0, 201))).toEqual([['mention', 201]]);
  expect(said('last-to-first', round(0, 401))).toEqual([['look', 401]]);
  expect(said('loop-to-first', round(250, 0))).toEqual([]);
  expect(said('loop-to-first', round(251, 0))).toEqual([['mention', 251]]);
});
