import type { Plan, SitePoint } from '@loopwright/model';
import { describe, expect, test } from 'vitest';
import type { Analysis, Finding } from '../figures.ts';
import { plainHole, plainPlan } from '../incremental/plain-plan.ts';
import { openAnalysis } from '../open-analysis.ts';
import { compareAnalyses } from './compare-analyses.ts';
import { steadyRipple } from './steady-ripple.ts';

const at = (x: number, y: number): SitePoint => ({ x, y });

/** Two holes; the second tee so far east of the first green (its edge at 10 m). */
const walkOf = (metres: number): Plan =>
  plainPlan([plainHole('h1', [at(0, 0), at(0, 300)]), plainHole('h2', [at(10 + metres, 300), at(10 + metres, 700)])]);

const analyse = (plan: Plan): Analysis => openAnalysis().analyse(plan, 'r');
const between = (before: number, after: number) => compareAnalyses(analyse(walkOf(before)), analyse(walkOf(after)));
const longWalks = (before: number, after: number) =>
  between(before, after).findings.filter(({ key }) => key.startsWith('long-walk|'));

describe('what changed', () => {
  test('is nothing between a state and itself', () => {
    expect(between(60, 60)).toEqual({ figures: [], findings: [] });
  });

  test('leaves out what no card would show', () => {
    expect(between(60, 60.4).figures).toEqual([]);
  });

  test('tells a walk that grew as worse, and a shorter one as better', () => {
    const grown = between(60, 75).figures.find(({ of }) => of.kind === 'walk');
    expect(grown).toEqual({
      of: { kind: 'walk', key: 'h1>h2', from: 'h1', to: 'h2' },
      figure: 'walk',
      before: 60,
      after: 75,
      better: false,
    });
    expect(between(75, 60).figures.find(({ of }) => of.kind === 'walk')?.better).toBe(true);
    expect(between(60, 75).figures.map(({ of, figure }) => `${of.kind} ${figure}`)).toEqual([
      'walk walk',
      'loop walk',
      'round walk',
      'round on foot',
    ]);
  });

  test.each([
    { before: 60, after: 100, change: 'gained' },
    { before: 100, after: 60, change: 'inside its limit again' },
    { before: 95, after: 110, change: 'worsened' },
    { before: 110, after: 95, change: 'eased' },
    { before: 100, after: 200, change: 'gained' }, // more severe
    { before: 200, after: 100, change: 'eased' }, // less severe
  ] as const)('a walk of $before m that becomes $after is $change', ({ before, after, change }) => {
    expect(longWalks(before, after).map((finding) => finding.change)).toEqual([change]);
  });

  test('names the worst that came and the worst that went', () => {
    expect(between(60, 320).worstGain).toMatchObject({ change: 'gained', key: 'long-walk|h1>h2' });
    expect(between(320, 60).worstLoss).toMatchObject({ change: 'inside its limit again', key: 'long-walk|h1>h2' });
    const quiet = (metres: number) => ({ ...analyse(walkOf(metres)), findings: [] });
    expect(compareAnalyses(quiet(60), quiet(75)).worstGain).toMatchObject({ figure: 'walk', after: 75 });
  });

  test('of two holes whose one alarm changes its reason is not one gone and one gained', () => {
    const alarm = (code: string, measured: number): Finding => ({
      key: `${code}|a|b`,
      code,
      severity: 'look',
      holes: ['a', 'b'],
      features: [],
      measured,
      limit: 50,
      unit: 'm',
      worse: 'less',
      setting: 'long-walk-look',
      place: { type: 'round' },
      detail: { pair: 'a|b' },
      safety: true,
    });
    const state = (finding: Finding): Analysis => ({
      routing: 'r',
      holes: new Map(),
      walks: [],
      loops: [],
      rounds: [],
      findings: [finding],
    });
    const before = alarm('landing-tee', 40);
    const after = alarm('holes-alongside', 30);
    expect(compareAnalyses(state(before), state(after)).findings).toEqual([
      { change: 'worsened', key: after.key, before, after },
    ]);
  });
});

describe('while a drag goes on', () => {
  test('a change joins the list from 2 m, and stays until nothing of it shows', () => {
    const first = steadyRipple(undefined, between(60, 61.5));
    expect(first.figures).toEqual([]);
    const second = steadyRipple(first, between(60, 62.5));
    expect(second.figures.map(({ after }) => after)).toContain(62.5);
    const third = steadyRipple(second, between(60, 61.5));
    expect(third.figures.find(({ of }) => of.kind === 'walk')?.after).toBe(61.5);
    expect(steadyRipple(third, between(60, 60.2)).figures).toEqual([]);
  });

  test('a finding that comes is listed at once', () => {
    const ripple = steadyRipple(undefined, between(89.5, 90.5));
    expect(ripple.findings.map(({ change }) => change)).toContain('gained');
  });

  const finding = (key: string, severity: Finding['severity']): Finding => ({
    key,
    code: 'holes-alongside',
    severity,
    holes: ['a', 'b'],
    features: [],
    measured: 40,
    limit: 50,
    unit: 'm',
    worse: 'less',
    setting: 'long-walk-look',
    place: { type: 'round' },
    detail: {},
    safety: true,
  });
  const gained = (key: string, severity: Finding['severity']) =>
    ({ change: 'gained', key, after: finding(key, severity) }) as const;

  test('a graver finding goes before what is listed; of one gravity what is listed keeps its place', () => {
    const shown = { figures: [], findings: [gained('second', 'look'), gained('first', 'mention')] };
    const next = { figures: [], findings: [gained('stop', 'stop'), gained('early', 'look'), ...shown.findings] };
    expect(steadyRipple(shown, next).findings.map(({ key }) => key)).toEqual(['stop', 'second', 'early', 'first']);
  });

  test('figures stand in the order of the plan, in the drag as after the drop', () => {
    const dropped = between(60, 104);
    const [one, two] = dropped.figures;
    if (!one || !two) throw new Error('a longer walk changes several figures');
    expect(steadyRipple({ figures: [two], findings: [] }, dropped).figures).toEqual(dropped.figures);
  });
});
