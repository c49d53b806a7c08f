import type { Finding } from '@loopwright/analysis';
import { expect, test } from 'vitest';
import { figureChangeWords } from './figure-change-words.ts';

const NAMES = {
  length: (metres: number) => `${metres} m`,
  lengthChange: (before: number, after: number) => `${after < before ? '−' : '+'}${Math.abs(after - before)} m`,
  angle: (degrees: number) => `${degrees}°`,
  number: (hole: string) => hole,
  feature: (id: string) => id,
};
const finding = (measured: number, severity: Finding['severity'] = 'look'): Finding => ({
  key: 'k',
  code: 'long-walk',
  severity,
  holes: [],
  features: [],
  measured,
  limit: 135,
  unit: 'm',
  worse: 'more',
  setting: 'long-walk-look',
  place: { type: 'round' },
  detail: {},
  safety: false,
});

test('a new finding is new, with its measure and limit', () => {
  expect(figureChangeWords({ change: 'gained', after: finding(140) }, NAMES)).toEqual({
    tag: 'new',
    below: '140 m, limit 135 m',
  });
});

test('a finding that became more severe says what it is now', () => {
  const change = { change: 'gained', before: finding(140), after: finding(310, 'stop') } as const;
  expect(figureChangeWords(change, NAMES)).toEqual({ tag: 'now stop', below: 'limit 135 m' });
});

test('worse and eased carry a sign', () => {
  expect(figureChangeWords({ change: 'worsened', before: finding(140), after: finding(150) }, NAMES).tag).toBe('+10 m');
  expect(figureChangeWords({ change: 'eased', before: finding(150), after: finding(140) }, NAMES).tag).toBe('−10 m');
});

test('a finding that is gone says what it was', () => {
  expect(figureChangeWords({ change: 'inside its limit again', before: finding(140) }, NAMES)).toEqual({
    tag: 'inside its limit',
    below: 'was 140 m, limit 135 m',
  });
});

test('a crossing says where it is: it is not measured against its limit', () => {
  const after = { ...finding(46), code: 'walk-crosses-line-of-play', limit: 20, detail: { ahead: 46 } };
  const words = figureChangeWords({ change: 'gained', after }, NAMES);
  expect(words.below).toBe('46 m from the tee, on its line of play');
});

test('what is counted is said in the finding’s own words', () => {
  const after: Finding = { ...finding(1, 'mention'), code: 'short-holes-close', limit: 1, unit: 'holes' };
  expect(figureChangeWords({ change: 'gained', after }, NAMES).below).toBe('one hole between');
});
