import { expect, test } from 'vitest';
import { ANALYSIS, PLAN, ROUTING } from '../reading/two-holes.test-plan.ts';
import { lengthenedTo, lineEnds } from './lengthened.ts';

const of = { routing: 'a', hole: 'h1' };
const tee = { end: 'tee:back' as const, words: 'Back tee', length: 365.76 }; // 400 yards of 0.9144 m

test('a hole slides at its placed tees and at its green', () => {
  const [hole] = ROUTING.holes;
  if (!hole) throw new Error('no hole');
  const ends = lineEnds(hole, ANALYSIS.holes.get('h1'), PLAN.teeSets, 'back');
  expect(ends.map(({ end, words }) => [end, words])).toEqual([
    ['tee:back', 'Back tee'],
    ['green', 'green'],
  ]);
});

test('a figure is the length it shall have, a sign makes it so much more or less', () => {
  expect(lengthenedTo(of, tee, '410', 'yards')).toEqual({
    kind: 'edit',
    edit: { ...of, edit: 'lengthen', end: 'tee:back', by: 9.144 },
  });
  expect(lengthenedTo(of, tee, '+10', 'metres')).toMatchObject({ edit: { by: 10 } });
  expect(lengthenedTo(of, tee, '−20 yd', 'metres')).toMatchObject({ edit: { by: -18.288 } });
});

test('the length it has already changes nothing, however the tee stands between two yards', () => {
  expect(lengthenedTo(of, { ...tee, length: 365.9 }, '400', 'yards')).toEqual({ kind: 'same' });
});

test('a hole of no length, and what is no length, is refused with a reason', () => {
  for (const typed of ['0', '-400 yd', 'far', '']) {
    expect(lengthenedTo(of, tee, typed, 'yards')).toMatchObject({ kind: 'wrong', why: expect.stringMatching(/.{8,}/) });
  }
});
