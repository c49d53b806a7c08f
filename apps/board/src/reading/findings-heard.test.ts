import type { Finding, FindingChange } from '@loopwright/analysis';
import { expect, test } from 'vitest';
import { findingsHeard } from './findings-heard.ts';
import { namesOf } from './names.ts';
import { PLAN, ROUTING } from './two-holes.test-plan.ts';

const NAMES = namesOf(PLAN, ROUTING, 'yards');

const finding = (key: string): Finding => ({
  key,
  code: 'long-walk',
  severity: 'look',
  safety: false,
  holes: ['h1', 'h2'],
  features: [],
  setting: 'long-walk-look',
  place: { type: 'round' },
  measured: 250,
  limit: 200,
  unit: 'm',
  worse: 'more',
  detail: {},
});
const gained = (key: string): FindingChange => ({ change: 'gained', key, after: finding(key) });
const gone = (key: string): FindingChange => ({ change: 'inside its limit again', key, before: finding(key) });

test('nothing that came or went is nothing to hear', () => {
  expect(findingsHeard([], NAMES)).toBe('');
  expect(findingsHeard([{ change: 'eased', key: 'a', before: finding('a'), after: finding('a') }], NAMES)).toBe('');
});

test('what came is told first, then what went', () => {
  const words = findingsHeard([gone('a'), gained('b'), gained('c')], NAMES);
  expect(words).toMatch(/^2 findings gained: [^;]+; [^;]+\. 1 gone: [^;]+\.$/);
  expect(findingsHeard([gone('a')], NAMES)).toMatch(/^1 finding gone: /);
});

test('thirty at once are counted, two are told', () => {
  const many = Array.from({ length: 30 }, (_, index) => gained(String(index)));
  const words = findingsHeard(many, NAMES);
  expect(words).toMatch(/^30 findings gained: /);
  expect(words).toMatch(/; and 28 more\.$/);
  expect(words.length).toBeLessThan(400);
});
