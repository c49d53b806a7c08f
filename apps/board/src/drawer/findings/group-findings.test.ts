import type { Severity } from '@loopwright/analysis';
import { expect, test } from 'vitest';
import type { FindingView } from './findings-view.ts';
import { groupFindings, pastLimit } from './group-findings.ts';

const view = (key: string, severity: Severity, holes: readonly string[], measured: number): FindingView => ({
  key,
  severity,
  severityWord: severity,
  title: key,
  sentence: key,
  source: '',
  safety: false,
  holes,
  state: 'open',
  decided: '',
  finding: {
    key,
    code: key,
    severity,
    holes,
    features: [],
    measured,
    limit: 100,
    unit: 'm',
    worse: 'more',
    setting: 'long-walk-look',
    place: { type: 'round' },
    detail: {},
    safety: false,
  },
});

const LISTED = [view('a', 'stop', ['10', '2'], 120), view('b', 'look', ['2'], 190), view('c', 'mention', [], 101)];

test('by severity the worst come first', () => {
  expect(groupFindings(LISTED, 'severity', 'listed').map(({ title }) => title)).toEqual(['Stop', 'Look', 'Mention']);
});

test('by hole, hole 2 comes before hole 10, a finding of two holes stands under both, the round is last', () => {
  const groups = groupFindings(LISTED, 'hole', 'listed');
  expect(groups.map(({ title, findings }) => [title, findings.map(({ key }) => key)])).toEqual([
    ['Hole 2', ['a', 'b']],
    ['Hole 10', ['a']],
    ['The round', ['c']],
  ]);
});

test('furthest past its limit first', () => {
  const [walks] = groupFindings(LISTED, 'subject', 'furthest');
  expect(walks?.title).toBe('Walks');
  expect(walks?.findings.map(({ key }) => key)).toEqual(['b', 'a', 'c']);
});

test('a limit of nothing is passed by whole metres', () => {
  expect(pastLimit({ measured: -3, limit: 0 })).toBe(3);
  expect(pastLimit({ measured: 30, limit: 40 })).toBe(0.25);
});

test('no findings make no groups', () => {
  expect(groupFindings([], 'hole', 'listed')).toEqual([]);
});
