import { seededRandom } from '@loopwright/model';
import { expect, test } from 'vitest';
import type { Finding } from '../figures.ts';
import { randomPlan } from '../incremental/random-plan.ts';
import { openAnalysis } from '../open-analysis.ts';
import { type Beside, insideCorridor, runsBeside } from './beside.ts';
import { type Laid, layOut } from './laid.ts';
import { rankOf, severityUnder } from './pairs.ts';

// Truth: the findings page's own words, by looking across from every other metre of one line to every 25 cm of the other, and
// by how far a place lies from a line against a half-width that widens evenly. Spacing is a middle value of looks 10 m
// apart there and 2 m here: they may differ by 3 m, the stretch by 20 m; a half-width by 30 cm.
const SEEDS = Array.from({ length: 60 }, (_, place) => place + 1);
const OFF = { spacing: 3, stretch: 20, corridor: 0.3 };

interface Pair {
  readonly name: string;
  readonly first: Laid;
  readonly second: Laid;
  readonly isNext: boolean;
  readonly alarm: Finding | undefined;
}

function pairsOf(seed: number): readonly Pair[] {
  const plan = randomPlan(seededRandom(seed), 6, 0);
  const analysis = openAnalysis().analyse(plan, 'r');
  const laid = layOut(plan, analysis);
  const alarms = new Map(analysis.findings.map((finding) => [finding.detail.pair, finding]));
  return laid.flatMap((first, place) =>
    laid.slice(place + 1).map((second, after) => ({
      name: `seed ${seed}: ${first.hole} and ${second.hole}`,
      first,
      second,
      isNext: after === 0,
      alarm: alarms.get(`${first.hole}|${second.hole}`),
    })),
  );
}

const PAIRS = SEEDS.flatMap(pairsOf);

const codesOf = (alarm: Finding | undefined) => [alarm?.code, ...String(alarm?.detail.also ?? '').split(' ')];

function spacingRank(isNext: boolean, { spacing, stretch, opposed }: Beside, off: 1 | -1): number {
  if (stretch - off * OFF.stretch < 100) return 0;
  const extra = opposed ? 5 : 0;
  const [stop, look, mention] = isNext ? [35, 45, 60] : [40, 50, 60];
  return rankOf(severityUnder(spacing + off * OFF.spacing, [stop, look + extra, mention + extra]));
}

test('holes alongside with too little between them are named, and no others', () => {
  const wrong = PAIRS.flatMap(({ name, first, second, isNext, alarm }) => {
    const beside = runsBeside(first, second);
    const isNamed = codesOf(alarm).includes('holes-alongside');
    const least = spacingRank(isNext, beside, 1);
    const most = spacingRank(isNext, beside, -1);
    const isMissed = least > 0 && (!isNamed || rankOf(alarm?.severity) < least);
    const isInvented = isNamed && (most === 0 || (alarm?.code === 'holes-alongside' && rankOf(alarm.severity) > most));
    return isMissed || isInvented ? [`${name}: ${JSON.stringify(beside)} ${alarm?.code} ${alarm?.severity}`] : [];
  });
  expect(wrong).toEqual([]);
});

test('what lies in another hole’s corridor is named, and nothing else', () => {
  const wrong = PAIRS.flatMap(({ name, first, second, isNext, alarm }) =>
    (
      [
        ['landing-in-corridor', 'landings'],
        ['tee-in-corridor', 'tees'],
      ] as const
    ).flatMap(([code, part]) => {
      if (isNext && part === 'tees') return [];
      const inside = [
        ...second[part].map((place) => insideCorridor(first, place)),
        ...first[part].map((place) => insideCorridor(second, place)),
      ].flatMap((by) => by ?? []);
      const deepest = inside.reduce((a, b) => Math.max(a, b), Number.NEGATIVE_INFINITY);
      const isNamed = codesOf(alarm).includes(code);
      const isWrong = isNamed ? deepest < -OFF.corridor : deepest > OFF.corridor;
      return isWrong ? [`${name}: ${code} by ${deepest.toFixed(2)}, named: ${isNamed}`] : [];
    }),
  );
  expect(wrong).toEqual([]);
});
