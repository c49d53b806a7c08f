import type { Plan, SiteMark, SitePoint } from '@loopwright/model';
import { expect, test } from 'vitest';
import { plainHole, plainPlan } from '../incremental/plain-plan.ts';
import { openAnalysis } from '../open-analysis.ts';
import { compareAnalyses } from './compare-analyses.ts';

const at = (x: number, y: number): SitePoint => ({ x, y });
const MARK: SiteMark = { id: 'm', kind: 'green site', at: at(0, 380), verdict: 'natural' };
const marked = (plan: Plan): Plan => ({ ...plan, site: { ...plan.site, marks: [MARK] } });
const toGreenAt = (north: number) => plainHole('h1', [at(0, 0), at(0, north)]);
const changesOfMarks = (before: Plan, after: Plan) => {
  const analysis = openAnalysis();
  const ripple = compareAnalyses(analysis.analyse(before, 'r'), analysis.analyse(after, 'r'));
  return ripple.findings.filter(({ key }) => key.startsWith('mark-unused')).map(({ change }) => change);
};

test('a hole that leaves its green site makes the site unused; one that comes to it ends that', () => {
  const [on, off] = [marked(plainPlan([toGreenAt(380)])), marked(plainPlan([toGreenAt(300)]))];
  expect(changesOfMarks(on, off)).toEqual(['gained']);
  expect(changesOfMarks(off, on)).toEqual(['inside its limit again']);
});

test('neither a mark just found nor the first hole drawn elsewhere makes anything worse', () => {
  const elsewhere = plainPlan([toGreenAt(200)]);
  expect(changesOfMarks(elsewhere, marked(elsewhere))).toEqual([]);
  expect(changesOfMarks(marked(plainPlan([])), marked(elsewhere))).toEqual([]);
});
