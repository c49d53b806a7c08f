import { type Boundary, type Plan, type SitePoint, seededRandom } from '@loopwright/model';
import { expect, test } from 'vitest';
import type { Analysis, Severity } from '../figures.ts';
import { randomPlan } from '../incremental/random-plan.ts';
import { openAnalysis } from '../open-analysis.ts';
import { type Laid, layOut } from './laid.ts';
import { apart, STEP, turnsAbout } from './lines.ts';
import { rankOf, severityUnder } from './pairs.ts';

// Truth: plain distances to each edge, inside or outside by the angle an outline turns about a place, the line of play
// every 25 cm. Limits: reference values on real boundaries, as the findings page gives them.
const SEEDS = Array.from({ length: 60 }, (_, place) => place + 1);
const LIMITS = {
  'edge-line': [0, 15, 30],
  'edge-landing': [10, 20, 46],
  'edge-green': [5, 15, 30],
  'edge-tee': [0, 0, 10],
} as const;
const ENDS = 60;

/** A ragged outline about the middle of the site, other people's land within it, a line known to a few metres. */
function raggedBoundary(random: () => number): Boundary {
  const around = (centre: SitePoint, corners: number, least: number, more: number) =>
    Array.from({ length: corners }, (_, corner) => {
      const angle = (corner * 2 * Math.PI) / corners;
      const radius = least + random() * more;
      return { x: centre.x + radius * Math.cos(angle), y: centre.y + radius * Math.sin(angle) };
    });
  return {
    outlines: [around({ x: 700, y: 700 }, 40, 500, 500)],
    inner: [around({ x: 600 + random() * 300, y: 500 + random() * 300 }, 12, 40, 40)],
    tolerance: random() < 0.5 ? 0 : 6,
  };
}

function toEdge(place: SitePoint, { outlines, inner }: Boundary): number {
  let least = Number.POSITIVE_INFINITY;
  for (const ring of [...outlines, ...inner]) {
    ring.forEach((a, i) => {
      const b = ring[(i + 1) % ring.length] ?? a;
      const length = apart(a, b);
      const share = ((place.x - a.x) * (b.x - a.x) + (place.y - a.y) * (b.y - a.y)) / length ** 2;
      const on = Math.min(1, Math.max(0, share));
      least = Math.min(least, apart(place, { x: a.x + (b.x - a.x) * on, y: a.y + (b.y - a.y) * on }));
    });
  }
  const inside = outlines.some((ring) => turnsAbout(ring, place)) && !inner.some((ring) => turnsAbout(ring, place));
  return inside ? least : -least;
}

interface EdgeReading {
  readonly name: string;
  readonly code: keyof typeof LIMITS;
  readonly measured: number;
  readonly reported: { readonly severity: Severity; readonly measured: number } | undefined;
  readonly atLeast: Severity | undefined;
  readonly atMost: Severity | undefined;
}

function readingsOf(seed: number): readonly EdgeReading[] {
  const random = seededRandom(seed);
  const plain = randomPlan(random, 6, 0);
  const boundary = raggedBoundary(random);
  const plan: Plan = { ...plain, site: { ...plain.site, boundary } };
  const analysis = openAnalysis().analyse(plan, 'r');
  return layOut(plan, analysis).flatMap((hole) => readEdges(hole, boundary, analysis, `seed ${seed}: ${hole.hole}`));
}

function readEdges(hole: Laid, boundary: Boundary, analysis: Analysis, name: string): readonly EdgeReading[] {
  const middle = hole.samples.filter(({ along }) => along >= ENDS && along <= hole.length - ENDS);
  const places = {
    'edge-line': hole.length > 2 * ENDS ? middle.map(({ at }) => at) : [],
    'edge-landing': hole.landings,
    'edge-green': [hole.green],
    'edge-tee': hole.tees,
  };
  const codes: readonly (keyof typeof LIMITS)[] = ['edge-line', 'edge-landing', 'edge-green', 'edge-tee'];
  return codes.flatMap((code) => {
    const distances = places[code].map((place) => toEdge(place, boundary));
    if (distances.length === 0) return [];
    const measured = distances.reduce((a, b) => Math.min(a, b));
    const off = code === 'edge-line' ? STEP : 0.005;
    const counted = measured + boundary.tolerance;
    const atLeast = severityUnder(counted + off, LIMITS[code]);
    const atMost = severityUnder(counted - off, LIMITS[code]);
    const reported = analysis.findings.find((finding) => finding.code === code && finding.holes[0] === hole.hole);
    return [{ name, code, measured, reported, atLeast, atMost }];
  });
}

const READINGS = SEEDS.flatMap(readingsOf);

test('whatever is near the edge of the site or outside is reported, and nothing else', () => {
  const wrong = READINGS.filter(({ reported, atLeast, atMost }) => {
    const rank = rankOf(reported?.severity);
    return rank < rankOf(atLeast) || rank > rankOf(atMost);
  });
  expect(wrong.slice(0, 10)).toEqual([]);
});

test('the distance told is the one measured', () => {
  const wrong = READINGS.filter(({ code, measured, reported }) => {
    if (!reported) return false;
    // The line is sampled here from the first whole step after its end, there halved until 10 cm are left.
    const off = code === 'edge-line' ? STEP + 0.1 : 0.005;
    return Math.abs(reported.measured - measured) > off;
  });
  expect(wrong.slice(0, 10)).toEqual([]);
});
