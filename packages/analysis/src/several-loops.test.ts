import type { Base, Hole, Loop, Plan, Round, SitePoint } from '@loopwright/model';
import { numberHoles, seededRandom } from '@loopwright/model';
import { describe, expect, test } from 'vitest';
import type { Analysis } from './figures.ts';
import { plainHole, plainPlan } from './incremental/plain-plan.ts';
import { randomEdit } from './incremental/random-edit.ts';
import { openAnalysis } from './open-analysis.ts';
import { compareAnalyses } from './ripple/compare-analyses.ts';

const at = (x: number, y: number): SitePoint => ({ x, y });
const analyse = (plan: Plan) => openAnalysis().analyse(plan, 'r');

const NINE = [0, 1, 2, 3, 4, 5, 6, 7, 8] as const;
/** Metres between the first tees of the three nines, east. */
const NINES_APART = 3000;

/** Nine holes of 400 m up and down, 200 m apart: each walk 190 m from the edge of a green of 10 m. */
function nine(name: string, west: number): readonly Hole[] {
  return NINE.map((place) => {
    const x = west + place * 200;
    const [from, to] = place % 2 === 0 ? [0, 400] : [400, 0];
    const id = `${name}${place + 1}`;
    return plainHole(id, [at(x, from), at(x, to)], { seat: { in: 'loop', loop: name, key: id } });
  });
}

interface Named {
  readonly loop: string;
  readonly base?: string;
}

function courseOf(loops: readonly Named[], rounds: readonly Round[], bases: readonly Base[] = []): Plan {
  const holes = loops.map(({ loop }, place) => nine(loop, place * NINES_APART));
  const plan = plainPlan(holes.flat());
  const laid: readonly Loop[] = loops.map(({ loop, base }, place) => ({
    id: loop,
    name: loop.toUpperCase(),
    ...(base !== undefined && { base }),
    holes: (holes[place] ?? []).map(({ id }) => id),
  }));
  return {
    ...plan,
    site: { ...plan.site, bases },
    routings: plan.routings.map((routing) => ({ ...routing, loops: laid, rounds })),
  };
}

const round = (first: string, second: string): Round => ({
  id: first + second,
  name: `${first.toUpperCase()} + ${second.toUpperCase()}`,
  loops: [first, second],
});

const ROUNDS = [round('a', 'b'), round('b', 'c'), round('c', 'a')];
const keysOf = ({ walks }: Analysis) => walks.map(({ key }) => key);
const walk = (analysis: Analysis, key: string) =>
  analysis.walks.find((each) => each.key === key)?.distance ?? Number.NaN;

/** Eight walks of 190 m in a nine. */
const WITHIN = 8 * 190;

describe('twenty-seven holes played as A + B, B + C and C + A', () => {
  const plan = courseOf([{ loop: 'a' }, { loop: 'b' }, { loop: 'c' }], ROUNDS);
  const analysis = analyse(plan);

  test('are three rounds of eighteen, each nine in two of them', () => {
    expect(analysis.rounds.map(({ holes }) => [holes.length, holes[0], holes[9]])).toEqual([
      [18, 'a1', 'b1'],
      [18, 'b1', 'c1'],
      [18, 'c1', 'a1'],
    ]);
    // 400 m each: par 4 for men by the table.
    for (const each of analysis.rounds) {
      expect(each.par.men).toBe(72);
      expect(each.lengths[0]?.measuredLength).toBe(18 * 400);
    }
    expect(analysis.loops.map(({ walk: metres }) => metres)).toEqual([WITHIN, WITHIN, WITHIN]);
  });

  test('walk on from every nine to the next of its round, once each', () => {
    const onward = keysOf(analysis).filter((key) => key[0] !== key[3]);
    expect(onward).toEqual(['a9>b1', 'b9>c1', 'c9>a1']);
    // a9's green (1600, 400), b1's tee (3000, 0): √(1400² + 400²) = 1456.022, less the green's 10 m.
    expect(walk(analysis, 'a9>b1')).toBe(1446.022);
    expect(analysis.rounds[0]?.walk).toBe(WITHIN + 1446.022 + WITHIN);
    expect(analysis.rounds[1]?.walk).toBe(analysis.rounds[0]?.walk);
    // c9's green (7600, 400) back to (0, 0): √(7600² + 400²) = 7610.519.
    expect(analysis.rounds[2]?.walk).toBe(WITHIN + 7600.519 + WITHIN);
  });

  test('have each long walk once, and each round its own sum', () => {
    const of = (code: string) => analysis.findings.filter((finding) => finding.code === code);
    expect(of('long-walk')).toHaveLength(24);
    expect(
      of('long-walk-between-loops')
        .map(({ holes }) => holes.join('>'))
        .sort(),
    ).toEqual(['a9>b1', 'b9>c1', 'c9>a1']);
    expect(
      of('long-walk-in-all')
        .map(({ key }) => key)
        .sort(),
    ).toEqual(['long-walk-in-all|ab', 'long-walk-in-all|bc', 'long-walk-in-all|ca']);
    expect(new Set(analysis.findings.map(({ key }) => key)).size).toBe(analysis.findings.length);
  });

  test('are numbered by the first round that plays them', () => {
    const numbers = numberHoles(
      plan.routings[0] ?? { id: 'r', name: '', locked: false, loops: [], rounds: [], holes: [], spare: [] },
    );
    expect([numbers.get('a1'), numbers.get('b1'), numbers.get('b9'), numbers.get('c1')]).toEqual([1, 10, 18, 10]);
  });
});

test('the last hole of a nine and the first of the next are consecutive in every round that plays them so', () => {
  // c9's green 25 m short of a1's tee: a mention for the next tee (30 m), a stop for any other (30 m).
  const plan = courseOf([{ loop: 'a' }, { loop: 'c' }], [round('c', 'a')]);
  const moved: Plan = {
    ...plan,
    routings: plan.routings.map((routing) => ({
      ...routing,
      holes: routing.holes.map((hole) =>
        hole.id === 'c9' && hole.green ? { ...hole, green: { ...hole.green, centre: at(0, -25) } } : hole,
      ),
    })),
  };
  const alarm = analyse(moved).findings.find(({ detail }) => detail.pair === 'a1|c9');
  const codes = [alarm?.code, ...String(alarm?.detail.also ?? '').split(' ')];
  expect(codes).toContain('green-next-tee');
  expect(codes).not.toContain('green-tee');
});

describe('two nines', () => {
  const bases: readonly Base[] = [
    { id: 'house', name: 'House', apron: at(-100, 0), footprints: [] },
    { id: 'halfway', name: 'Halfway house', apron: at(2900, 0), footprints: [] },
  ];
  const both = [round('a', 'b')];

  test('from different bases: out and back to each, and from one base to the other', () => {
    const analysis = analyse(
      courseOf(
        [
          { loop: 'a', base: 'house' },
          { loop: 'b', base: 'halfway' },
        ],
        both,
        bases,
      ),
    );
    const bent = keysOf(analysis).filter((key) => /house|halfway/.test(key));
    expect(bent).toEqual(['house>a1', 'a9>house', 'house>halfway', 'halfway>b1', 'b9>halfway']);
    // 100 + 1,520 + (√(1700² + 400²) − 10) + 3,000 + 100 + 1,520 + (√(1700² + 400²) − 10), √ = 1746.425.
    expect(analysis.rounds[0]?.walk).toBe(9712.85);
    expect(analysis.loops.map(({ walk: metres }) => metres)).toEqual([3356.425, 3356.425]);
  });

  test('the second without a base: back to the base, and on from there', () => {
    const analysis = analyse(courseOf([{ loop: 'a', base: 'house' }, { loop: 'b' }], both, bases));
    expect(keysOf(analysis).filter((key) => /house|b1/.test(key))).toEqual([
      'house>a1',
      'a9>house',
      'house>b1',
      'b1>b2',
    ]);
  });

  test('the first without a base: from the last green to the base of the second', () => {
    const analysis = analyse(courseOf([{ loop: 'a' }, { loop: 'b', base: 'halfway' }], both, bases));
    expect(keysOf(analysis).filter((key) => key.includes('halfway'))).toEqual([
      'a9>halfway',
      'halfway>b1',
      'b9>halfway',
    ]);
  });

  test('a base that is gone counts as none', () => {
    const gone = courseOf(
      [
        { loop: 'a', base: 'gone' },
        { loop: 'b', base: 'gone' },
      ],
      both,
      [],
    );
    expect(keysOf(analyse(gone))).toEqual(keysOf(analyse(courseOf([{ loop: 'a' }, { loop: 'b' }], both))));
  });
});

test('with three nines the incremental analysis equals a full one after every edit', () => {
  const random = seededRandom(27);
  const analysis = openAnalysis();
  const bases = [{ id: 'house', name: 'House', apron: at(-100, 0), footprints: [] }];
  let plan = courseOf([{ loop: 'a', base: 'house' }, { loop: 'b' }, { loop: 'c', base: 'house' }], ROUNDS, bases);
  for (let edit = 0; edit < 30; edit++) {
    expect(analysis.analyse(plan, 'r')).toEqual(analyse(plan));
    plan = randomEdit(plan, random);
  }
});

test('a hole that comes or goes is no change of its figures, but of the walks and totals', () => {
  const whole = courseOf([{ loop: 'a' }, { loop: 'b' }], [round('a', 'b')]);
  const without: Plan = {
    ...whole,
    routings: whole.routings.map((routing) => ({
      ...routing,
      loops: routing.loops.map((loop) => ({ ...loop, holes: loop.holes.filter((id) => id !== 'a5') })),
      holes: routing.holes.map((hole) =>
        hole.id === 'a5' ? { ...hole, seat: { in: 'removed', key: 'a0' } as const } : hole,
      ),
    })),
  };
  const gone = compareAnalyses(analyse(whole), analyse(without));
  const back = compareAnalyses(analyse(without), analyse(whole));
  const ofHole = ({ figures }: typeof gone) => figures.filter(({ of }) => of.kind === 'hole' && of.hole === 'a5');
  expect([ofHole(gone), ofHole(back)]).toEqual([[], []]);
  const length = ({ figures }: typeof gone) =>
    figures.find(({ of, figure }) => of.kind === 'round' && figure === 'length');
  expect(length(gone)).toMatchObject({ before: 7200, after: 6800 });
  expect(length(back)).toMatchObject({ before: 6800, after: 7200 });
  // a4's green (600, 0), a5's tee (800, 0), a6's tee (1000, 400): 190 m, then √(400² + 400²) − 10 = 555.685.
  const onward = gone.figures.find(({ of, figure }) => of.kind === 'walk' && of.key === 'a4>a6' && figure === 'walk');
  expect(onward).toMatchObject({ before: 190, better: false });
  expect(Math.abs((onward?.after ?? 0) - 555.685)).toBeLessThan(0.002); // the green's edge is kept to the millimetre
});
