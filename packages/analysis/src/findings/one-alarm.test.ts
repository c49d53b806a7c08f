import type { Disposition } from '@loopwright/model';
import { describe, expect, test } from 'vitest';
import type { Finding, Severity } from '../figures.ts';
import { dispositionOf } from './disposition-of.ts';
import { oneAlarm } from './one-alarm.ts';
import { sortFindings } from './sort-findings.ts';

const finding = (
  code: string,
  severity: Severity,
  measured: number,
  holes: readonly string[] = ['a', 'b'],
): Finding => ({
  key: [code, ...holes].join('|'),
  code,
  severity,
  holes,
  features: [],
  measured,
  limit: 50,
  unit: 'm',
  worse: 'less',
  setting: 'long-walk-look',
  place: { type: 'round' },
  detail: {},
  safety: true,
});

describe('one alarm for two holes', () => {
  test('is the most severe, then the one furthest past its limit, with the others named', () => {
    const alarm = oneAlarm('a|b', [
      finding('spacing', 'look', 45),
      finding('landing-tee', 'stop', 39),
      finding('landing-line', 'stop', 20),
    ]);
    expect(alarm).toMatchObject({ code: 'landing-line', detail: { pair: 'a|b', also: 'landing-tee spacing' } });
    expect(oneAlarm('a|b', [])).toBeUndefined();
  });
});

test('findings come most severe first, then in playing order, those of the whole round last', () => {
  const list = [
    finding('c', 'look', 1, []),
    finding('b', 'look', 1, ['two']),
    finding('a', 'look', 1, ['one', 'two']),
    finding('z', 'stop', 1, ['two']),
    finding('a', 'look', 1, ['two']),
  ];
  const sorted = sortFindings(list, ['one', 'two']).map(({ key }) => key);
  expect(sorted).toEqual(['z|two', 'a|one|two', 'a|two', 'b|two', 'c']);
});

describe('a disposition', () => {
  const decided = (measured: number): Disposition => ({
    routing: 'r',
    finding: 'spacing|a|b',
    kind: 'mitigated by',
    words: 'a bank',
    measured,
  });
  const state = (measured: number, at: number) =>
    dispositionOf(finding('spacing', 'look', measured), [decided(at)], 'r').state;

  test('holds while the measure worsens by no more than 3 m or 5 %', () => {
    expect(state(40, 40)).toBe('decided');
    expect(state(37, 40)).toBe('decided'); // 3 m, not more
    expect(state(36.9, 40)).toBe('reopened');
    expect(state(96, 100)).toBe('decided'); // 4 m, but 4 %
    expect(state(94.9, 100)).toBe('reopened');
    expect(state(60, 40)).toBe('decided'); // better
  });

  test('is of one routing, and of one finding', () => {
    const found = finding('spacing', 'look', 40);
    expect(dispositionOf(found, [decided(40)], 'other')).toEqual({ state: 'open' });
    expect(dispositionOf(finding('green-green', 'look', 40), [decided(40)], 'r')).toEqual({ state: 'open' });
  });
});
