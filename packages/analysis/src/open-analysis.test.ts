import { type Plan, type Routing, type SitePoint, seededRandom } from '@loopwright/model';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Analysis } from './figures.ts';
import { randomEdit } from './incremental/random-edit.ts';
import { randomPlan } from './incremental/random-plan.ts';
import { openAnalysis } from './open-analysis.ts';

const SEEDS = fc.integer({ min: 1, max: 2 ** 31 });

/** A fixed seed keeps the run repeatable; fast-check prints it with the case when it fails. */
const RUNS = { numRuns: 25, seed: 20_260_501 };

const fullRun = (plan: Plan) => openAnalysis().analyse(plan, 'r');

test('after every random edit the incremental analysis equals a full one', () => {
  fc.assert(
    fc.property(SEEDS, (seed) => {
      const random = seededRandom(seed);
      const analysis = openAnalysis();
      let plan = randomPlan(random, 6, 15);
      for (let edit = 0; edit < 12; edit++) {
        expect(analysis.analyse(plan, 'r')).toEqual(fullRun(plan));
        plan = randomEdit(plan, random);
      }
    }),
    RUNS,
  );
});

test('flipping between a routing and its copy, each changed on its own, equals a run from nothing', () => {
  fc.assert(
    fc.property(SEEDS, (seed) => {
      const random = seededRandom(seed);
      const analysis = openAnalysis();
      const first = randomPlan(random, 4, 10);
      const [routing] = first.routings;
      if (!routing) throw new Error('the random plan has a routing');
      let plan: Plan = { ...first, routings: [routing, { ...routing, id: 's' }] };
      for (let edit = 0; edit < 8; edit++) {
        for (const id of ['r', 's']) expect(analysis.analyse(plan, id)).toEqual(openAnalysis().analyse(plan, id));
        plan = randomEdit(plan, random);
      }
    }),
    { ...RUNS, numRuns: 15 },
  );
});

test('a plan before and after a drag can be asked for by turns without working anything out twice', () => {
  const random = seededRandom(7);
  const analysis = openAnalysis();
  const before = randomPlan(random);
  const after = randomEdit(before, random);
  const first = analysis.analyse(before, 'r');
  analysis.analyse(after, 'r');
  const again = analysis.analyse(before, 'r');
  for (const [id, hole] of first.holes) expect(again.holes.get(id)).toBe(hole);
  first.walks.forEach((walk, place) => {
    expect(again.walks[place]).toBe(walk);
  });
});

test('holes, walks and pairs that an edit does not touch keep their objects', () => {
  const random = seededRandom(11);
  const analysis = openAnalysis();
  const plan = randomPlan(random);
  const first = analysis.analyse(plan, 'r');
  const rebuilt: Plan = {
    ...plan,
    site: { ...plan.site, features: [...plan.site.features] },
    settings: { ...plan.settings },
  };
  const second = analysis.analyse(rebuilt, 'r');
  for (const [id, hole] of first.holes) expect(second.holes.get(id)).toBe(hole);
  expect(second.loops.every((loop, place) => loop === first.loops[place])).toBe(true);
  expect(second.rounds[0]).toBe(first.rounds[0]);
});

test('a routing the plan does not have is a broken contract', () => {
  expect(() => openAnalysis().analyse(randomPlan(seededRandom(1)), 'gone')).toThrow(RangeError);
});

test('the analysis leaves a frozen plan as it is', () => {
  const plan = deepFreeze(randomPlan(seededRandom(3)));
  expect(() => fullRun(plan)).not.toThrow();
});

test('spare holes have figures and no findings of clearance', () => {
  const random = seededRandom(5);
  const plan = randomPlan(random);
  const routing = plan.routings[0];
  const spare = routing?.loops[0]?.holes[2];
  if (!routing || spare === undefined) throw new Error('the random plan has holes');
  const out = asSpare(routing, spare);
  const analysis = fullRun({ ...plan, routings: [out] });
  expect(analysis.holes.has(spare)).toBe(true);
  expect(analysis.findings.filter(({ holes }) => holes.includes(spare))).toEqual([]);
  expect(analysis.walks.some(({ key }) => key.includes(spare))).toBe(false);
});

const MOTIONS: readonly { readonly name: string; readonly of: (p: SitePoint) => SitePoint }[] = [
  { name: 'moved by whole kilometres', of: ({ x, y }) => ({ x: x + 4000, y: y - 7000 }) },
  { name: 'turned by a quarter', of: ({ x, y }) => ({ x: -y, y: x }) },
  { name: 'mirrored', of: ({ x, y }) => ({ x: -x, y }) },
];

test.each(MOTIONS)('a site that is $name keeps every length, par and walk', ({ of }) => {
  fc.assert(
    fc.property(SEEDS, (seed) => {
      const plan = withoutProposals(randomPlan(seededRandom(seed), 6, 0));
      const lengths = lengthsOf(fullRun(plan));
      const moved = lengthsOf(fullRun(withPoints(plan, of)));
      expect(moved.length).toBe(lengths.length);
      // Points and lengths are kept to the millimetre.
      lengths.forEach((length, place) => {
        expect(Math.abs((moved[place] ?? 0) - length)).toBeLessThanOrEqual(0.002);
      });
    }),
    RUNS,
  );
});

function lengthsOf({ holes, walks }: Analysis): readonly number[] {
  const ofHoles = [...holes.values()].flatMap(({ tees, par }) => [par.men, ...tees.map((tee) => tee.measuredLength)]);
  return [...ofHoles, ...walks.map(({ distance }) => distance)];
}

/** A straight hole's proposed tee goes to one side by choice; a mirrored one is another tee. */
function withoutProposals(plan: Plan): Plan {
  const round = (routing: Routing) => ({
    ...routing,
    holes: routing.holes.map((hole) =>
      hole.green ? { ...hole, green: { ...hole.green, width: 20, length: 20 } } : hole,
    ),
  });
  return { ...plan, teeSets: plan.teeSets.slice(0, 1), routings: plan.routings.map(round) };
}

function withPoints(plan: Plan, of: (p: SitePoint) => SitePoint): Plan {
  return {
    ...plan,
    site: { ...plan.site, bases: plan.site.bases.map((base) => ({ ...base, apron: of(base.apron) })) },
    routings: plan.routings.map((routing) => ({
      ...routing,
      holes: routing.holes.map((hole) => ({
        ...hole,
        tees: Object.fromEntries(Object.entries(hole.tees).map(([id, at]) => [id, of(at)])),
        turnPoints: hole.turnPoints.map((turn) => ({ ...turn, at: of(turn.at) })),
        waypoints: hole.waypoints.map(of),
        ...(hole.green && { green: { ...hole.green, centre: of(hole.green.centre) } }),
      })),
    })),
  };
}

function asSpare(routing: Routing, spare: string): Routing {
  return {
    ...routing,
    loops: routing.loops.map((loop) => ({ ...loop, holes: loop.holes.filter((hole) => hole !== spare) })),
    holes: routing.holes.map((hole) =>
      hole.id === spare ? { ...hole, seat: { in: 'spare', key: 'a' } as const, relations: [] } : hole,
    ),
    spare: [spare],
  };
}

function deepFreeze<Value>(value: Value): Value {
  if (typeof value === 'object' && value !== null && !Object.isFrozen(value)) {
    Object.freeze(value);
    for (const part of Object.values(value)) deepFreeze(part);
  }
  return value;
}
