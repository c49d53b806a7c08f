import { expect, test } from 'vitest';
import { checkHolePair } from '../clearance/hole-pair.ts';
import { LIMITS, laidHole } from '../clearance/laid-hole.ts';
import type { Finding } from '../figures.ts';
import { changeSentence } from './change-sentence.ts';
import { SAFETY_CAUTION, sentenceOf, severityWord, sourceOf, titleOf, WORDS } from './sentences.ts';
import type { ReaderNames } from './words.ts';

const NAMES: ReaderNames = {
  number: (hole) =>
    new Map<string, string>([
      ['a', '4'],
      ['b', '6'],
      ['c', '7'],
    ]).get(hole) ?? hole,
  feature: (id) => `the ${id}`,
  length: (metres) => `${Math.round(metres)} m`,
  angle: (degrees) => `${degrees}°`,
};

const finding = (code: Finding['code'], rest: Partial<Finding> = {}): Finding => ({
  key: code,
  code,
  severity: 'look',
  holes: ['a', 'b'],
  features: ['mere'],
  measured: 31.4,
  limit: 40,
  unit: 'm',
  worse: 'less',
  setting: 'spacing-stop',
  place: { type: 'round' },
  detail: {},
  safety: false,
  ...rest,
});

test('a sentence says what lies where, by how much, and the limit', () => {
  const found = checkHolePair(
    laidHole('a', [
      [0, 0],
      [0, 400],
    ]),
    laidHole('b', [
      [31.4, 200],
      [200, 200],
    ]),
    'other',
    LIMITS,
  );
  const tee = found.find(({ code }) => code === 'tee-in-fan');
  expect(tee && sentenceOf(tee, NAMES)).toBe(
    'Tee 6 lies in the shot fan of 4: 31 m off the line of the tee shot, 200 m ahead; the limit there is 35 m.',
  );
});

test.each([
  ['tee-in-fan', 'on the line of the approach'],
  ['landing-line', 'touching; the limit is'],
  ['public-beside-line', 'no distance between them; the limit there is'],
  ['edge-green', 'right at it; the limit is'],
])('%s at no distance is said in words, not as nought metres away', (code, words) => {
  const sentence = sentenceOf(finding(code, { measured: 0, detail: { shot: 'approach', ahead: 120 } }), NAMES);
  expect(sentence).toContain(words);
  expect(sentence).not.toMatch(/\b0 m\b/);
});

test('a measure that reads like its limit is said to be just beyond it', () => {
  const alongside = finding('holes-alongside', {
    measured: 54.7,
    limit: 55,
    detail: { play: 'opposed', stretch: 320 },
  });
  expect(sentenceOf(alongside, NAMES)).toBe(
    '4 and 6 run close alongside, played towards each other: 55 m between their lines for 320 m; just under the limit.',
  );
  const walk = finding('long-walk', { measured: 135.2, limit: 135, worse: 'more' });
  expect(sentenceOf(walk, NAMES)).toBe('Walk 4 → 6 is long: 135 m; just over the limit.');
  const fan = finding('tee-in-fan', { measured: 29.9, limit: 30, detail: { shot: 'approach', ahead: 160 } });
  expect(sentenceOf(fan, NAMES)).toContain('160 m ahead; just under the limit there.');
});

test.each([
  [
    { measured: -10.4, limit: -10, detail: { tolerance: 10 } },
    '10 m outside; nothing may lie outside, with 10 m allowed',
  ],
  [{ measured: 3, limit: 5, detail: { tolerance: 10 } }, '3 m inside; the limit is 15 m, with 10 m allowed'],
  [{ measured: -4, limit: 0 }, '4 m outside; nothing may lie outside.'],
  [{ measured: 12, limit: 15 }, '12 m inside; the limit is 15 m.'],
])('beside the boundary no limit reads as less than nothing: %j', (rest, words) => {
  expect(sentenceOf(finding('edge-line', rest), NAMES)).toContain(words);
});

test.each([
  ['Round', 'one such run in the round.'],
  ['', 'one such run in the round.'],
  ['Blue + Red', 'one such run in Blue + Red.'],
])('a round called "%s" is spoken of as: %s', (round, words) => {
  const run = finding('runs-one-way', { measured: 1, unit: 'holes', detail: { round } });
  expect(sentenceOf(run, NAMES)).toContain(words);
});

test('par 3s near each other are called that, however long; water is crossed once or more', () => {
  const near = finding('short-holes-close', { measured: 1, unit: 'holes', detail: { pars: '3' } });
  expect(sentenceOf(near, NAMES)).toBe('4 and 6 are par 3s that come close together: one hole between.');
  const wet = finding('walk-crosses-water', { measured: 2, unit: 'crossings', worse: 'more' });
  expect(sentenceOf(wet, NAMES)).toBe('Walk 4 → 6 crosses the mere: 2 times; bridges are needed.');
});

test('what is stated is said to be stated, and still to be checked', () => {
  const sentence = sentenceOf(finding('green-green', { detail: { stated: 'shares its green with' } }), NAMES);
  expect(sentence).toContain('it has still to be checked');
});

test('a change is said in a sentence of its own', () => {
  const walk = finding('walk-crosses-line-of-play', {
    holes: ['c', 'b', 'c'],
    detail: { crossing: 'ahead of the tee', ahead: 30 },
  });
  expect(changeSentence({ change: 'gained', key: 'k', after: walk }, NAMES)).toBe(
    'Walk 6 → 7 now crosses in front of tee 7',
  );
  const oneWay = finding('three-one-way', { holes: ['b', 'a'] });
  expect(changeSentence({ change: 'inside its limit again', key: 'k', before: oneWay }, NAMES)).toBe(
    '4 and 6 no longer run one way',
  );
  const before = finding('long-walk', { measured: 120 });
  const after = finding('long-walk', { measured: 150 });
  expect(changeSentence({ change: 'worsened', key: 'k', before, after }, NAMES)).toBe(
    'Walk 4 → 6 is long: 150 m, was 120 m',
  );
  expect(changeSentence({ change: 'inside its limit again', key: 'k', before }, NAMES)).toBe(
    'Walk 4 → 6 is no longer long',
  );
});

test.each(Object.keys(WORDS))('%s has a title, a sentence and a change that read to the end', (code) => {
  const found = finding(code, {
    detail: { angle: 30, apart: 100, par: 4, apartDegrees: 12, part: 'tee', shot: 'approach' },
  });
  expect(titleOf(code).length).toBeGreaterThan(3);
  const sentence = sentenceOf(found, NAMES);
  expect(sentence).toMatch(/^[A-Z0-9].*\.$/);
  expect(sentence).not.toMatch(/undefined|NaN|\?/);
  expect(changeSentence({ change: 'gained', key: 'k', after: found }, NAMES)).toMatch(/ now /);
});

test('no word of ours reads as accepting a danger', () => {
  const all = Object.keys(WORDS)
    .map((code) => sentenceOf(finding(code), NAMES))
    .join(' ');
  expect(`${all} ${SAFETY_CAUTION}`).not.toMatch(
    /\b(safe|acceptable|accepted|fine|allowed to|no danger|harmless|ok)\b/i,
  );
  expect(SAFETY_CAUTION).toMatch(/local codes/);
});

test('the source is that of the setting whose limit was passed', () => {
  expect(sourceOf(finding('holes-alongside'))).toMatch(/31 mapped courses/);
  expect(severityWord('stop')).toBe('Stop');
});
