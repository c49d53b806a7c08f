import { type Analysis, markUses, openAnalysis } from '@loopwright/analysis';
import { type ReaderNames, sentenceOf } from '@loopwright/analysis/wording';
import { type NamedEdit, openPlan, parseNamedEdit } from '@loopwright/document';
import { canonicalJson, type Plan, seededRandom } from '@loopwright/model';
import { pick, randomEdit } from '@loopwright/testkit';
import { expect, test } from 'vitest';
import { boardPlan } from '../convergence/board-plan.ts';

type Random = () => number;
type Analyse = (plan: Plan, routing: string) => Analysis;

/** What a broken or hostile page may say in place of a field. */
const RUBBISH: readonly unknown[] = [
  ...[0, -0, -1, 0.5, 1e-9, 1e6, -1e6, 999_999.999, 1e308, 3, 200, 2000, 6.28],
  ...[
    '',
    ' ',
    'x'.repeat(10_000),
    '\u202eabc',
    '\ud800',
    'first',
    'h1',
    'h2',
    'a',
    'out',
    'back',
    'pond',
    'house',
    'green',
  ],
  ...['constructor', '__proto__', 'tee:back', 'turn:t1', 'ring', 'rod', 'stroke', 'area', 'line', 'point'],
  ...[null, true, false, [], {}, [null], [[]], { x: 0, y: 0 }, { x: 1e6, y: -1e6 }],
  [
    { x: 0, y: 0 },
    { x: 0, y: 0 },
  ],
  Array.from({ length: 501 }, (_, x) => ({ x, y: x * x })),
  [
    { x: 0, y: 0 },
    { x: 100, y: 100 },
    { x: 100, y: 0 },
    { x: 0, y: 100 },
  ],
];

/** The same value with one thing in it, however deep, said otherwise. */
function brokenAt(value: unknown, random: Random): unknown {
  if (typeof value !== 'object' || value === null || random() < 0.15) return pick(RUBBISH, random);
  const chosen = pick(Object.keys(value), random);
  const entries = Object.entries(value).flatMap(([name, part]): [string, unknown][] => {
    if (name !== chosen) return [[name, part]];
    return random() < 0.1 ? [] : [[name, brokenAt(part, random)]];
  });
  return Array.isArray(value) ? entries.map(([, part]) => part) : Object.fromEntries(entries);
}

/** The first number that cannot be shown, by its way from the top. */
function notFinite(value: unknown, way: string): string | undefined {
  if (typeof value === 'number') return Number.isFinite(value) ? undefined : `${way} is ${value}`;
  if (value instanceof Map) return notFinite([...value.entries()], way);
  if (typeof value !== 'object' || value === null) return undefined;
  for (const [name, part] of Object.entries(value)) {
    const found = notFinite(part, `${way}.${name}`);
    if (found !== undefined) return found;
  }
  return undefined;
}

const NAMES: ReaderNames = {
  number: (hole) => hole,
  feature: (id) => `the feature ${id}`,
  length: (metres) => `${Math.round(metres)} m`,
  angle: (degrees) => `${Math.round(degrees)}°`,
};

const UNREADABLE = /NaN|undefined|Infinity|null|\[object/;

const ofAll = (plan: Plan, analyse: Analyse) => plan.routings.map(({ id }) => analyse(plan, id));

/** What is wrong with what is worked out from a plan. */
function wrongWith(plan: Plan, analyse: Analyse): string | undefined {
  for (const { id } of plan.routings) {
    const analysis = analyse(plan, id);
    const wrong =
      notFinite(analysis, id) ??
      analysis.findings.map((finding) => sentenceOf(finding, NAMES)).find((words) => UNREADABLE.test(words));
    if (wrong !== undefined) return wrong;
  }
  return notFinite(plan, 'plan') ?? notFinite([...markUses(plan)], 'marks');
}

/** What somebody else's page says it is dragging: an edit of any family with one field that is not what it should be. */
function heard(plan: Plan, random: Random): NamedEdit | undefined {
  const edit = randomEdit(plan, random);
  return edit && parseNamedEdit(JSON.parse(JSON.stringify(brokenAt(edit, random)) ?? 'null'));
}

/** Seeds of a normal run; with LONG=1 many more. SEEDS=n and FROM=n plays so many from there. */
const SEEDS = Number(process.env.SEEDS ?? (process.env.LONG ? 1500 : 12));
const FROM = Number(process.env.FROM ?? 1);

test.each(Array.from({ length: SEEDS }, (_, index) => FROM + index))(
  'seed %i: an edit with a broken field is shown as far as it goes, done or refused, and every figure stays one',
  (seed) => {
    const random = seededRandom(seed);
    const plan = openPlan();
    plan.edit({ edit: 'lay out plan', plan: boardPlan() });
    const analysis = openAnalysis();
    for (let step = 0; step < 150; step++) {
      const edit = random() < 0.2 ? randomEdit(plan.read(), random) : heard(plan.read(), random);
      if (!edit) continue;
      const said = JSON.stringify(edit).slice(0, 2000);
      const shown = plan.readWith([edit]);
      expect(wrongWith(shown, analysis.analyse), said).toBeUndefined();
      if (random() < 0.05) expect(ofAll(shown, analysis.analyse), said).toEqual(ofAll(shown, openAnalysis().analyse));
      if (random() < 0.5) continue;
      plan.edit(edit);
      expect(canonicalJson(plan.read()), `shown is what is done: ${said}`).toBe(canonicalJson(shown));
      expect(plan.unread(), said).toEqual([]);
    }
    plan.close();
  },
);
