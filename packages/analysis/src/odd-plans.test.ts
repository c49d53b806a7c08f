import type { Boundary, Feature, FeatureGeometry, Hole, Loop, Plan, Round, SitePoint } from '@loopwright/model';
import { seededRandom } from '@loopwright/model';
import { describe, expect, test } from 'vitest';
import { plainHole, plainPlan } from './incremental/plain-plan.ts';
import { randomPlan } from './incremental/random-plan.ts';
import { openAnalysis } from './open-analysis.ts';
import { compareAnalyses } from './ripple/compare-analyses.ts';
import { type ReaderNames, sentenceOf } from './wording/index.ts';

const at = (x: number, y: number): SitePoint => ({ x, y });
const analyse = (plan: Plan) => openAnalysis().analyse(plan, 'r');

/** The first number that is none, by its way from the top; every number of an analysis is one that can be shown. */
function firstNotFinite(value: unknown, way = 'analysis'): string | undefined {
  if (typeof value === 'number') return Number.isFinite(value) ? undefined : `${way} is ${value}`;
  if (value instanceof Map) return firstNotFinite([...value.entries()], way);
  if (typeof value !== 'object' || value === null) return undefined;
  for (const [name, part] of Object.entries(value)) {
    const found = firstNotFinite(part, `${way}.${name}`);
    if (found) return found;
  }
  return undefined;
}

const names: ReaderNames = {
  number: (hole) => hole,
  feature: (id) => `the feature ${id}`,
  length: (metres) => `${Math.round(metres)} m`,
  angle: (degrees) => `${Math.round(degrees)}°`,
};

const north = plainHole('h1', [at(0, 0), at(0, 400)]);
const east = plainHole('h2', [at(60, 400), at(60, 800)]);

function withRouting(plan: Plan, loops: readonly Loop[], rounds: readonly Round[]): Plan {
  return { ...plan, routings: plan.routings.map((routing) => ({ ...routing, loops, rounds })) };
}

function onSite(boundary: Boundary | undefined, features: readonly Feature[]): Plan {
  const plan = plainPlan([north, east], features);
  return { ...plan, site: { ...plan.site, ...(boundary && { boundary }) } };
}

const feature = (kind: Feature['kind'], geometry: FeatureGeometry, id = 'f'): Feature => ({
  id,
  kind,
  geometry,
  allows: { carry: false, walk: false, mow: false, build: false },
  buffer: 5,
});

const KINDS = ['public road', 'public path', 'neighbour', 'water', 'range', 'protected', 'building'] as const;
const SHAPES: readonly FeatureGeometry[] = [
  { type: 'area', rings: [] },
  { type: 'area', rings: [[]] },
  { type: 'area', rings: [[at(10, 100)]] },
  { type: 'area', rings: [[at(10, 100), at(20, 120)]] },
  { type: 'area', rings: [[at(10, 100), at(10, 100), at(10, 100)]] },
  { type: 'area', rings: [[at(-20, 100), at(20, 100), at(60, 100)]] },
  { type: 'area', rings: [[at(-20, 100), at(20, 140), at(20, 100), at(-20, 140)], [at(0, 110)]] },
  { type: 'line', points: [] },
  { type: 'line', points: [at(5, 200)] },
  { type: 'line', points: [at(5, 200), at(5, 200)] },
  { type: 'point', at: at(0, 200) },
];
const degenerate = KINDS.flatMap((kind, k) => SHAPES.map((shape, s) => feature(kind, shape, `f${k}-${s}`)));

const noGreen: Hole = (({ green: _, ...rest }) => rest)(plainHole('h3', [at(0, 0), at(0, 300)]));
const flatGreen = { centre: at(0, 300), length: 0, width: 0, bearing: 0 };
const base = { id: 'house', name: 'House', apron: at(0, 0), footprints: [] };
const randomWith = (change: (plan: Plan) => Plan) => change(randomPlan(seededRandom(9)));

const ODD: readonly (readonly [what: string, plan: Plan])[] = [
  ['no hole', plainPlan([])],
  ['one hole', plainPlan([north])],
  ['one hole without a tee', plainPlan([{ ...north, tees: {} }])],
  ['a hole without a tee and one without a green', plainPlan([north, noGreen, { ...east, tees: {} }])],
  ['a hole of no length', plainPlan([plainHole('h1', [at(5, 5), at(5, 5)]), east])],
  [
    'turn points on the tee, on each other and on the green',
    plainPlan([plainHole('h1', [at(0, 0), at(0, 0), at(0, 200), at(0, 200), at(0, 400), at(0, 400)]), east]),
  ],
  ['a line that goes back on itself', plainPlan([plainHole('h1', [at(0, 0), at(0, 300), at(0, 100)]), east])],
  ['a tee on the green before it', plainPlan([north, plainHole('h2', [at(0, 400), at(0, 800)])])],
  ['two holes that are the same', plainPlan([north, { ...north, id: 'h2' }])],
  ['the same hole the other way round', plainPlan([north, plainHole('h2', [at(0, 400), at(0, 0)])])],
  [
    'greens of no size, and an outline of one point',
    plainPlan([
      { ...north, green: flatGreen },
      { ...east, green: { ...flatGreen, centre: at(60, 800), outline: [at(0, 0)] } },
      plainHole('h3', [at(120, 800), at(400, 800)]),
    ]),
  ],
  [
    'waypoints on the green, on each other and on the tee',
    plainPlan([{ ...north, waypoints: [at(0, 400), at(0, 400), at(60, 400)] }, east]),
  ],
  [
    'tees for sets nobody has',
    plainPlan([
      { ...north, tees: { gold: at(0, 0) } },
      { ...east, tees: { gold: at(0, 0), back: at(60, 400) } },
    ]),
  ],
  ['no tee sets', { ...plainPlan([north, east]), teeSets: [] }],
  [
    'holes a million metres out',
    plainPlan([
      plainHole('h1', [at(-1e6, -1e6), at(-1e6, -999_600)]),
      plainHole('h2', [at(1e6, 1e6), at(999_600, 1e6)]),
    ]),
  ],
  ['a hole two million metres long', plainPlan([plainHole('h1', [at(-1e6, 0), at(1e6, 0)]), east])],
  [
    'a boundary that crosses itself',
    onSite({ outlines: [[at(-100, -50), at(100, 900), at(100, -50), at(-100, 900)]], inner: [], tolerance: 0 }, []),
  ],
  [
    'a boundary of no outline, of one without points and of one point',
    onSite({ outlines: [[], [at(0, 0)]], inner: [[]], tolerance: 5 }, []),
  ],
  ['an empty boundary', onSite({ outlines: [], inner: [], tolerance: 0 }, [])],
  ['features of no size', onSite(undefined, degenerate)],
  [
    'features of no size from a base',
    { ...onSite(undefined, degenerate), site: { ...onSite(undefined, degenerate).site, bases: [base] } },
  ],
  [
    'loops of no hole, of holes nobody has, and a round of loops nobody has',
    withRouting(
      plainPlan([north, east]),
      [
        { id: 'a', name: 'A', base: 'gone', holes: ['h1', 'ghost', 'h2'] },
        { id: 'b', name: 'B', base: 'gone', holes: [] },
      ],
      [
        { id: 'round', name: 'A + B', loops: ['a', 'b', 'gone'] },
        { id: 'none', name: 'None', loops: [] },
      ],
    ),
  ],
  ['a removed hole that a loop still names', plainPlan([north, { ...east, seat: { in: 'removed', key: 'a0' } }])],
  ['sixty-six holes', randomPlan(seededRandom(3), 33)],
  [
    'three sets of relations to itself and to nobody',
    plainPlan([
      {
        ...north,
        relations: [
          { kind: 'shares its green with', hole: 'h1' },
          { kind: 'crosses on purpose', hole: 'gone' },
        ],
      },
      east,
    ]),
  ],
  [
    'limits out of their order',
    {
      ...plainPlan([north, east]),
      settings: { 'spacing-stop': 300, 'spacing-mention': 0, 'fan-inner-angle': 30, 'fan-outer-angle': 5 },
    },
  ],
  [
    'corridors of no width',
    randomWith((plan) => ({
      ...plan,
      routings: plan.routings.map((routing) => ({
        ...routing,
        holes: routing.holes.map((hole) => ({ ...hole, corridor: { tee: 0, landing: 0, green: 0, behind: 0 } })),
      })),
    })),
  ],
];

describe.each(ODD)('a plan with %s', (_, plan) => {
  test('is worked out, every number one that can be shown', () => {
    expect(firstNotFinite(analyse(plan))).toBeUndefined();
  });

  test('has findings that can be read, each once', () => {
    const { findings } = analyse(plan);
    for (const finding of findings)
      expect(sentenceOf(finding, names)).not.toMatch(/NaN|undefined|Infinity|null|\[object/);
    expect(new Set(findings.map(({ key }) => key)).size).toBe(findings.length);
  });

  test('compares with an ordinary one, either way', () => {
    const ordinary = analyse(plainPlan([north, east]));
    expect(firstNotFinite(compareAnalyses(analyse(plan), ordinary))).toBeUndefined();
    expect(firstNotFinite(compareAnalyses(ordinary, analyse(plan)))).toBeUndefined();
  });
});
