import type { Verdict } from '@loopwright/model';
import { expect, test } from 'vitest';
import { findingsOf, laidPlan } from './laid-round.ts';

const judged = (...verdicts: readonly Verdict[]) => laidPlan(verdicts.map((verdict) => ({ verdict })));

test('while nobody has judged, verdicts say nothing', () => {
  const plan = judged('undecided', 'undecided', 'undecided');
  for (const code of ['weak-place', 'weak-together', 'few-keepers'] as const)
    expect(findingsOf(code, plan)).toEqual([]);
});

test('a weak hole at the start or finish of a loop, and weak holes in a row', () => {
  const plan = judged('weak', 'keeper', 'weak', 'weak', 'sound');
  expect(findingsOf('weak-place', plan)).toMatchObject([
    { holes: ['h01'], detail: { where: 'start' }, severity: 'mention' },
  ]);
  expect(findingsOf('weak-together', plan)).toMatchObject([{ holes: ['h03', 'h04'], measured: 2 }]);
});

test('a loop half judged without a keeper', () => {
  expect(findingsOf('few-keepers', judged('sound', 'sound', 'undecided', 'undecided'))).toMatchObject([
    { measured: 0 },
  ]);
  expect(findingsOf('few-keepers', judged('sound', 'undecided', 'undecided', 'undecided'))).toEqual([]);
  expect(findingsOf('few-keepers', judged('sound', 'keeper', 'sound', 'undecided'))).toEqual([]);
});

test('a site mark is taken up by a part of its kind within 30 m', () => {
  // The first hole runs north from (0, 0) for 350 m.
  const mark = (kind: 'green site' | 'tee site' | 'landing ground', x: number, y: number) =>
    laidPlan([{ heading: 0 }], 9, [{ id: 'm', kind, at: { x, y }, verdict: 'natural' }]);
  expect(findingsOf('mark-unused', mark('green site', 30, 350))).toEqual([]);
  expect(findingsOf('mark-unused', mark('green site', 31, 350))).toMatchObject([
    { key: 'mark-unused|m', measured: 31 },
  ]);
  expect(findingsOf('mark-unused', mark('tee site', 0, 30))).toEqual([]);
  expect(findingsOf('mark-unused', mark('landing ground', 0, 228.6))).toEqual([]);
  expect(findingsOf('mark-unused', mark('green site', 0, 0))).toHaveLength(1);
});
