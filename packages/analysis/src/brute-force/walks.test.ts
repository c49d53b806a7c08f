import { type Green, type Plan, type SitePoint, seededRandom } from '@loopwright/model';
import { expect, test } from 'vitest';
import type { Analysis, Severity, WalkFigures } from '../figures.ts';
import { randomPlan } from '../incremental/random-plan.ts';
import { openAnalysis } from '../open-analysis.ts';
import { type Laid, layOut } from './laid.ts';
import { apart, crossings, lengthOf, nearest, sampled } from './lines.ts';
import { rankOf, severityUnder } from './pairs.ts';

// Truth: the definitions and limits of the findings page, worked out a second time by walking: an oval is left where it
// ends, lines cross where their ends lie on two sides, landing areas are passed every 25 cm.
const SEEDS = Array.from({ length: 250 }, (_, place) => place + 1);

/** From the centre outwards in centimetres until the oval is left. */
function leaveGreen({ centre, length, width, bearing }: Green, towards: SitePoint): SitePoint {
  const whole = apart(centre, towards);
  const isOn = (metres: number) => {
    const x = ((towards.x - centre.x) * metres) / whole;
    const y = ((towards.y - centre.y) * metres) / whole;
    const along = x * Math.sin(bearing) + y * Math.cos(bearing);
    const across = x * Math.cos(bearing) - y * Math.sin(bearing);
    return (along / (length / 2)) ** 2 + (across / (width / 2)) ** 2 < 1;
  };
  let metres = 0;
  while (metres < whole && isOn(metres)) metres += 0.01;
  const share = Math.min(metres, whole) / whole;
  return { x: centre.x + (towards.x - centre.x) * share, y: centre.y + (towards.y - centre.y) * share };
}

interface Walked {
  readonly name: string;
  readonly from: string;
  readonly to: string;
  readonly path: readonly SitePoint[];
  readonly figures: WalkFigures | undefined;
  readonly laid: readonly Laid[];
  readonly analysis: Analysis;
}

function walksOf(seed: number): readonly Walked[] {
  const plan = randomPlan(seededRandom(seed), 6, 0);
  const analysis = openAnalysis().analyse(plan, 'r');
  const laid = layOut(plan, analysis);
  return (plan.routings[0]?.loops ?? []).flatMap(({ holes }) =>
    holes.slice(1).map((to, place) => walkFrom(plan, analysis, laid, holes[place] ?? '', to, seed)),
  );
}

function walkFrom(
  plan: Plan,
  analysis: Analysis,
  laid: readonly Laid[],
  from: string,
  to: string,
  seed: number,
): Walked {
  const hole = plan.routings[0]?.holes.find(({ id }) => id === from);
  const tee = laid.find((other) => other.hole === to)?.line[0];
  if (!hole?.green || !tee) throw new RangeError('walkFrom: needs a green and a tee');
  const stops = [...hole.waypoints, tee];
  const start = leaveGreen(hole.green, stops[0] ?? tee);
  const figures = analysis.walks.find(({ key }) => key === `${from}>${to}`);
  return { name: `seed ${seed}: ${from}>${to}`, from, to, path: [start, ...stops], figures, laid, analysis };
}

function reported(walk: Walked, code: string, about?: string): Severity | undefined {
  const holes = [...(about === undefined ? [] : [about]), walk.from, walk.to].join(' ');
  return walk.analysis.findings.find((finding) => finding.code === code && finding.holes.join(' ') === holes)?.severity;
}

const walks = SEEDS.flatMap(walksOf);

test('a walk is as long as it takes to leave the green and go by its waypoints', () => {
  const wrong = walks.filter(({ path, figures }) => Math.abs((figures?.distance ?? -1) - lengthOf(path)) > 0.015);
  expect(wrong.map(({ name }) => name)).toEqual([]);
});

test('a long walk is told, and no other', () => {
  const over = (metres: number) =>
    metres > 300 ? 'stop' : metres > 135 ? 'look' : metres > 90 ? 'mention' : undefined;
  const wrong = walks.filter((walk) => {
    const metres = lengthOf(walk.path);
    const rank = rankOf(reported(walk, 'long-walk'));
    return rank < rankOf(over(metres - 0.02)) || rank > rankOf(over(metres + 0.02));
  });
  expect(wrong.map(({ name }) => name)).toEqual([]);
});

/** Calibrated: far from tee and green a stop, before the green or 20 m ahead of the tee a look, nearer a mention. */
function crossingSeverity(ahead: number, left: number): Severity {
  if (ahead >= 50) return left < 60 ? 'look' : 'stop';
  return ahead >= 20 ? 'look' : 'mention';
}

/** The worst that crossing a line may be called, a centimetre either way; where the walk's own line begins or ends is none. */
function readCrossing(walk: Walked, hole: Laid): { readonly atLeast: number; readonly atMost: number } {
  const length = lengthOf(walk.path);
  let atLeast = 0;
  let atMost = 0;
  for (const { alongFirst, alongSecond } of crossings(walk.path, hole.line)) {
    const atEnd =
      (hole.hole === walk.from && alongFirst < 0.51) || (hole.hole === walk.to && alongFirst > length - 0.51);
    const left = hole.length - alongSecond;
    const ranks = [-0.02, 0, 0.02].map((off) => rankOf(crossingSeverity(alongSecond + off, left - off)));
    atMost = Math.max(atMost, ...ranks);
    if (!atEnd && alongSecond > 0.02 && left > 0.02) atLeast = Math.max(atLeast, Math.min(...ranks));
  }
  return { atLeast, atMost };
}

test('whatever line of play a walk crosses is reported with its severity, and nothing else', () => {
  const wrong = walks.flatMap((walk) =>
    walk.laid.flatMap((hole) => {
      const { atLeast, atMost } = readCrossing(walk, hole);
      const rank = rankOf(reported(walk, 'walk-crosses-line-of-play', hole.hole));
      return rank < atLeast || rank > atMost ? [`${walk.name} over ${hole.hole}: ${rank}, not ${atLeast}`] : [];
    }),
  );
  expect(wrong).toEqual([]);
});

test('the distance of a crossing ahead of the tee is the one along the line of play', () => {
  const wrong = walks.flatMap((walk) =>
    (walk.figures?.crossings ?? []).flatMap(({ what }) => {
      if (what.kind !== 'line of play' || what.where === 'behind') return [];
      const hole = walk.laid.find((other) => other.hole === what.hole);
      const near = crossings(walk.path, hole?.line ?? []).some(
        ({ alongSecond }) => Math.abs(alongSecond - what.ahead) < 0.02,
      );
      return near ? [] : [`${walk.name} over ${what.hole} at ${what.ahead}`];
    }),
  );
  expect(wrong).toEqual([]);
});

test('a walk near a landing area is told, unless crossing that line is told no less severely', () => {
  const wrong = walks.flatMap((walk) => {
    const path = sampled(walk.path);
    return walk.laid.flatMap((hole) => {
      if (hole.hole === walk.from || hole.hole === walk.to || hole.landings.length === 0) return [];
      const metres = Math.min(...hole.landings.map((at) => nearest(at, path).distance));
      const rank = rankOf(reported(walk, 'walk-landing', hole.hole));
      const atLeast = rankOf(severityUnder(metres + 0.14, [20, 40, 50]));
      const atMost = rankOf(severityUnder(metres - 0.14, [20, 40, 50]));
      const crossed = rankOf(reported(walk, 'walk-crosses-line-of-play', hole.hole));
      const missed = rank < atLeast && crossed < atLeast;
      return missed || rank > atMost ? [`${walk.name} past ${hole.hole} at ${metres.toFixed(2)}: ${rank}`] : [];
    });
  });
  expect(wrong).toEqual([]);
});
