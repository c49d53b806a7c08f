// The demo course in, findings out. Every recorded finding carries the reason why an architect would want it, or why it
// is there all the same; a change here needs a sentence in the commit.
import { readFileSync } from 'node:fs';
import { type Finding, openAnalysis } from '@loopwright/analysis';
import { demoPlan } from '@loopwright/demo';
import { expect, test } from 'vitest';

interface Recorded {
  readonly severity: string;
  readonly code: string;
  /** With what stands behind it in the same pair of holes, one alarm a pair. */
  readonly also: readonly string[];
  readonly holes: readonly string[];
  readonly features: readonly string[];
  /** In the finding's own unit, to one decimal. */
  readonly measured: number;
  readonly reason: string;
}

const recorded: readonly Recorded[] = JSON.parse(
  readFileSync(new URL('./demo-findings.json', import.meta.url), 'utf8'),
);
const { findings, rounds } = openAnalysis().analyse(demoPlan(), 'a');

function asRecorded({ severity, code, detail, holes, features, measured }: Finding) {
  const also = typeof detail.also === 'string' ? detail.also.split(' ') : [];
  return { severity, code, also, holes, features, measured: Math.round(measured * 10) / 10 };
}

test('the demo yields the recorded findings, most severe first', () => {
  expect(findings.map(asRecorded)).toEqual(recorded.map(({ reason, ...finding }) => finding));
});

test('every recorded finding says why', () => {
  for (const { reason } of recorded) expect(reason.length).toBeGreaterThan(20);
});

/** The faults that packages/demo/README.md says were left in on purpose. */
const PLANTED = [
  { what: 'the walk that keeps out of the mere is long', code: 'long-walk', holes: ['samphire', 'alder'] },
  {
    what: 'the walk home from the last green crosses ahead of the tenth tee',
    code: 'walk-crosses-line-of-play',
    holes: ['home', 'juniper'],
  },
  { what: "the sixteenth tee lies in the eighteenth's shot fan", code: 'tee-in-fan', holes: ['home', 'heron'] },
  { what: 'the third green is close to the boundary', code: 'edge-green', holes: ['sluice'] },
  { what: 'nine and fourteen lie close alongside', code: 'holes-alongside', holes: ['beacon', 'alder'] },
  { what: 'three and eleven are alike', code: 'par-threes-alike', holes: ['sluice', 'stile'] },
  { what: 'a public path crosses the eleventh', code: 'public-beside-line', holes: ['stile'] },
] as const;

test.each(PLANTED)('found: $what ($code)', ({ code, holes }) => {
  const found = findings
    .map(asRecorded)
    .some(
      (finding) =>
        (finding.code === code || finding.also.includes(code)) &&
        [...holes].sort().join() === [...finding.holes].sort().join(),
    );
  expect(found).toBe(true);
});

test('the walk home crosses some 30 to 40 m ahead of the tenth tee, as laid', () => {
  const crossing = findings.find(({ code }) => code === 'walk-crosses-line-of-play');
  expect(crossing?.severity).toBe('look');
  expect(crossing?.detail.crossing).toBe('ahead of the tee');
  expect(Number(crossing?.detail.ahead)).toBeGreaterThan(30);
  expect(Number(crossing?.detail.ahead)).toBeLessThan(40);
});

// Calibration on 31 mapped courses: 0 to 4 stops, 3.5 to 17.5 looks, median 20 mentions a course.
test('it is no wall of alarms', () => {
  const count = (severity: string) => findings.filter((finding) => finding.severity === severity).length;
  expect(count('stop')).toBeLessThanOrEqual(4);
  expect(count('look')).toBeLessThanOrEqual(10);
  expect(count('mention')).toBeLessThanOrEqual(20);
});

test('the card adds up to a par of 71 for everyone', () => {
  expect(rounds.map(({ par }) => par)).toEqual([{ men: 71, women: 71 }]);
});
