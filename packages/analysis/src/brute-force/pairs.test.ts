import { seededRandom } from '@loopwright/model';
import { expect, test } from 'vitest';
import type { Analysis, Finding } from '../figures.ts';
import { randomPlan } from '../incremental/random-plan.ts';
import { openAnalysis } from '../open-analysis.ts';
import { layOut } from './laid.ts';
import { type Reading, rankOf, readPair } from './pairs.ts';

// Truth: the definitions and limits of the findings page, worked out a second time with nothing but Pythagoras, arctangents
// and lines sampled every 25 cm. Distances between points agree to 5 mm, to lines to 13 cm, angles to 0.01°: a measure
// nearer to its limit than that may be called either way.
const SEEDS = Array.from({ length: 250 }, (_, place) => place + 1);

/** Codes this check measures; the others between two holes have checks of their own. */
const MEASURED = new Set([
  'lines-cross',
  'landing-tee',
  'landing-green',
  'landing-landing',
  'landing-line',
  'green-green',
  'green-tee',
  'green-next-tee',
  'tee-in-fan',
  'green-in-fan',
  'landing-in-fan',
]);

interface Pair {
  readonly name: string;
  readonly readings: readonly Reading[];
  readonly alarm: Finding | undefined;
}

function pairsOf(seed: number): readonly Pair[] {
  const plan = randomPlan(seededRandom(seed), 6, 0);
  const analysis = openAnalysis().analyse(plan, 'r');
  const laid = new Map(layOut(plan, analysis).map((hole) => [hole.hole, hole]));
  const order = plan.routings[0]?.loops.flatMap(({ holes }) => holes) ?? [];
  return order.flatMap((a, place) =>
    order.slice(place + 1).map((b, after) => {
      const first = laid.get(a);
      const second = laid.get(b);
      if (!first || !second) throw new Error('every hole in play is laid');
      const readings = readPair(first, second, after === 0 ? 'next' : 'other');
      return { name: `seed ${seed}: ${a} and ${b}`, readings, alarm: alarmOf(analysis, a, b) };
    }),
  );
}

/** The one alarm of two holes, whatever its code. */
function alarmOf({ findings }: Analysis, a: string, b: string): Finding | undefined {
  const pair = [a, b].sort().join('|');
  return findings.find(({ detail }) => detail.pair === pair);
}

function codesOf(alarm: Finding | undefined): readonly string[] {
  if (!alarm) return [];
  const also = typeof alarm.detail.also === 'string' ? alarm.detail.also.split(' ') : [];
  return [alarm.code, ...also];
}

const PAIRS = SEEDS.flatMap(pairsOf);

test('the plans hold enough to find', () => {
  const codes = new Set(PAIRS.flatMap(({ readings }) => readings.map(({ code }) => code)));
  expect([...codes].sort()).toEqual([...MEASURED].sort());
  expect(PAIRS.filter(({ alarm }) => alarm).length).toBeGreaterThan(4000);
});

test('whatever lies too close by plain measuring is reported, no less severely', () => {
  const missed: string[] = [];
  for (const { name, readings, alarm } of PAIRS) {
    const codes = codesOf(alarm);
    for (const { code, measured, atLeast } of readings) {
      if (atLeast === undefined) continue;
      if (!codes.includes(code)) missed.push(`${name}: ${code} at ${measured.toFixed(2)} is not named`);
      else if (rankOf(alarm?.severity) < rankOf(atLeast)) missed.push(`${name}: ${code} at ${measured} is ${atLeast}`);
    }
  }
  expect(missed.slice(0, 20)).toEqual([]);
});

test('whatever is reported lies too close by plain measuring, no less severely', () => {
  const invented: string[] = [];
  for (const { name, readings, alarm } of PAIRS) {
    for (const code of codesOf(alarm)) {
      if (MEASURED.has(code) && !readings.some((reading) => reading.code === code))
        invented.push(`${name}: ${code} is named, nothing of it is measured`);
    }
    if (!alarm || !MEASURED.has(alarm.code)) continue;
    const worst = Math.max(...readings.filter(({ code }) => code === alarm.code).map(({ atMost }) => rankOf(atMost)));
    if (worst < rankOf(alarm.severity)) invented.push(`${name}: ${alarm.code} ${alarm.severity} is too severe`);
  }
  expect(invented.slice(0, 20)).toEqual([]);
});

test('the distance told is one that can be measured', () => {
  const wrong: string[] = [];
  for (const { name, readings, alarm } of PAIRS) {
    if (!alarm || !MEASURED.has(alarm.code) || alarm.code === 'lines-cross' || alarm.unit !== 'm') continue;
    const near = readings.filter(({ code }) => code === alarm.code);
    if (!near.some(({ measured }) => Math.abs(measured - alarm.measured) < 0.14))
      wrong.push(`${name}: ${alarm.code} ${alarm.measured}, not ${near.map(({ measured }) => measured.toFixed(2))}`);
  }
  expect(wrong.slice(0, 20)).toEqual([]);
});
