import fc from 'fast-check';
import { expect, test } from 'vitest';
import { smallPlan } from '../fixtures/small-plan.ts';
import { openPlan } from '../plan-document.ts';
import { createPlanState } from '../server/create-plan-state.ts';

const opened = () => openPlan(createPlanState(smallPlan()));
type Opened = ReturnType<typeof opened>;
const hole = (plan: Opened, id = 'h1') => plan.read().routings[0]?.holes.find((one) => one.id === id);
const of = { routing: 'a', hole: 'h1' } as const;
const turns = (plan: Opened) => hole(plan)?.turnPoints.map(({ id }) => id);

test('a turn is put in where it comes in play, and a hole turns at most three times', () => {
  const plan = opened();
  const add = (turn: string, place: number) =>
    plan.edit({ edit: 'add turn point', ...of, turn, at: { x: 5, y: 100 }, place });
  expect(add('new', 1)).toBe('done');
  expect(turns(plan)).toEqual(['t1', 'new', 't2']);
  expect(add('more', 0)).toBe('nothing');
  plan.edit({ edit: 'remove turn point', ...of, turn: 't1' });
  expect(add('new', 0)).toBe('nothing');
  expect(add('early', -3)).toBe('done');
  expect(turns(plan)).toEqual(['early', 'new', 't2']);
  expect(plan.edit({ edit: 'remove turn point', ...of, turn: 't1' })).toBe('gone');
});

test('a turn taken out takes its pin along, and undo brings both back', () => {
  const plan = opened();
  plan.edit({ edit: 'pin', ...of, part: 'turn:t1' });
  plan.edit({ edit: 'remove turn point', ...of, turn: 't1' });
  expect(hole(plan)?.pinned).toEqual([]);
  plan.undo();
  expect(hole(plan)?.pinned).toEqual(['turn:t1']);
  expect(turns(plan)).toEqual(['t1', 't2']);
});

/** A hole straight north, by hand: tee at 0, turns at 200 and 300, green at 400. */
const straight = () => {
  const plan = opened();
  for (const [part, y] of [
    ['tee:back', 0],
    ['tee:forward', 60],
    ['turn:t1', 200],
    ['turn:t2', 300],
    ['green', 400],
  ] as const)
    plan.edit({ edit: 'move part', ...of, part, to: { x: 0, y } });
  return plan;
};

test.each([
  ['tee:back', 30, 'done', -30],
  ['tee:forward', 30, 'done', 30],
  ['tee:back', -50, 'done', 50],
  ['tee:back', -200, 'nothing', 0],
  ['tee:back', -1000, 'nothing', 0],
  ['green', 12.5, 'done', 412.5],
  ['green', -99.5, 'done', 300.5],
  ['green', -100, 'nothing', 400],
  ['green', Number.NaN, 'nothing', 400],
  ['tee:back', 0, 'nothing', 0],
] as const)('%s lengthened by %d m: %s, and lies at %d', (end, by, answer, y) => {
  const plan = straight();
  expect(plan.edit({ edit: 'lengthen', ...of, end, by })).toBe(answer);
  const at = end === 'green' ? hole(plan)?.green?.centre : hole(plan)?.tees[end.slice(4)];
  expect(at).toEqual({ x: 0, y });
});

test('a forward tee beyond the first turn goes back from the turn still ahead of it', () => {
  const plan = straight();
  plan.edit({ edit: 'move part', ...of, part: 'turn:t2', to: { x: 100, y: 200 } });
  plan.edit({ edit: 'move part', ...of, part: 'tee:forward', to: { x: 40, y: 200 } });
  plan.edit({ edit: 'lengthen', ...of, end: 'tee:forward', by: 10 });
  expect(hole(plan)?.tees.forward).toEqual({ x: 30, y: 200 });
});

test('an end that was not placed, and a tee of a set that is gone, cannot be lengthened', () => {
  const plan = straight();
  plan.edit({ edit: 'propose tee', ...of, teeSet: 'forward' });
  expect(hole(plan)?.tees).toEqual({ back: { x: 0, y: 0 } });
  expect(plan.edit({ edit: 'propose tee', ...of, teeSet: 'forward' })).toBe('nothing');
  expect(plan.edit({ edit: 'lengthen', ...of, end: 'tee:forward', by: 5 })).toBe('nothing');
  expect(plan.edit({ edit: 'lengthen', ...of, end: 'tee:gone', by: 5 })).toBe('gone');
});

test('a green is shaped about its centre, and a size no green has changes nothing', () => {
  const plan = opened();
  const shape = { length: 34, width: 20, bearing: 1.2 };
  expect(plan.edit({ edit: 'shape green', ...of, shape })).toBe('done');
  expect(hole(plan)?.green).toEqual({ centre: { x: 120, y: 400 }, ...shape });
  const outline = [
    { x: -10, y: -12 },
    { x: 11, y: -9 },
    { x: 3, y: 15 },
  ];
  expect(plan.edit({ edit: 'shape green', ...of, shape: { ...shape, outline } })).toBe('done');
  expect(hole(plan)?.green?.outline).toEqual(outline);
  expect(plan.edit({ edit: 'shape green', ...of, shape: { ...shape, length: 1e9 } })).toBe('nothing');
  plan.edit({ edit: 'move hole', ...of, by: { x: 1, y: 0 } });
  expect(hole(plan)?.green?.outline).toEqual(outline);
});

test('several holes move as one step, and without those that are gone', () => {
  const plan = opened();
  plan.edit({ edit: 'remove hole', routing: 'a', hole: 'h2' });
  const move = { edit: 'move holes', routing: 'a', holes: ['h1', 'h2', 'h3', 'h1'], by: { x: 10, y: 5 } } as const;
  const before = plan.read();
  expect(plan.edit(move)).toBe('done');
  expect(hole(plan)?.tees.back).toEqual({ x: 10, y: 5 });
  expect(hole(plan, 'h3')?.green?.centre).toEqual({ x: 730, y: 405 });
  expect(hole(plan, 'h2')).toEqual(before.routings[0]?.holes[1]);
  plan.undo();
  expect(plan.read()).toEqual(before);
  expect(plan.edit({ ...move, by: { x: 1e6, y: 0 } })).toBe('nothing');
  expect(plan.edit({ ...move, holes: ['h2', 'nobody'] })).toBe('gone');
});

test('waypoints, corridor widths and a note are set and taken away', () => {
  const plan = opened();
  const base = plan.read();
  expect(plan.edit({ edit: 'set waypoints', ...of, waypoints: [{ x: 1, y: 2 }] })).toBe('done');
  expect(plan.edit({ edit: 'set corridor', ...of, corridor: { landing: 40 } })).toBe('done');
  expect(plan.edit({ edit: 'note hole', ...of, note: 'wet in\nspring' })).toBe('done');
  expect(hole(plan)).toMatchObject({
    waypoints: [{ x: 1, y: 2 }],
    corridor: { landing: 40 },
    note: 'wet in\nspring',
  });
  const many = Array.from({ length: 21 }, (_, x) => ({ x, y: 0 }));
  expect(plan.edit({ edit: 'set waypoints', ...of, waypoints: many })).toBe('nothing');
  plan.edit({ edit: 'set waypoints', ...of, waypoints: [] });
  plan.edit({ edit: 'set corridor', ...of, corridor: null });
  plan.edit({ edit: 'note hole', ...of, note: '  ' });
  expect(plan.read()).toEqual(base);
});

const RELATIONS = fc.array(
  fc.record({
    hole: fc.constantFrom('h1', 'h2', 'h3', 'h4'),
    to: fc.constantFrom('h1', 'h2', 'h3', 'h4'),
    kind: fc.constantFrom('shares its green with', 'crosses on purpose', 'shares fairway with'),
  }),
  { maxLength: 6 },
);

test('exchanging corridors twice is nothing, whatever lies on them and whoever is related to whom', () => {
  fc.assert(
    fc.property(RELATIONS, fc.constantFrom('h2', 'h4'), (relations, other) => {
      const plan = opened();
      for (const { hole: one, to, kind } of relations)
        plan.edit({ edit: 'relate', routing: 'a', hole: one, relation: { kind, hole: to } });
      plan.edit({ edit: 'remove turn point', ...of, turn: 't2' });
      plan.edit({ edit: 'set corridor', ...of, corridor: { tee: 20 } });
      const before = plan.read();
      plan.edit({ edit: 'exchange corridors', ...of, with: other });
      plan.edit({ edit: 'exchange corridors', ...of, with: other });
      expect(plan.read()).toEqual(before);
    }),
    { numRuns: 40 },
  );
});

test('exchanged corridors: ground, pins and relations change hands; name, verdict, par, note and number stay', () => {
  const plan = opened();
  plan.edit({ edit: 'name hole', ...of, name: 'Quarry' });
  plan.edit({ edit: 'judge', ...of, verdict: 'keeper', reason: 'view' });
  plan.edit({ edit: 'set par', ...of, sex: 'men', par: 5 });
  plan.edit({ edit: 'note hole', ...of, note: 'mine' });
  plan.edit({ edit: 'pin', ...of, part: 'green' });
  plan.edit({ edit: 'set waypoints', ...of, waypoints: [{ x: 7, y: 7 }] });
  plan.edit({ edit: 'relate', ...of, relation: { kind: 'shares its green with', hole: 'h2' } });
  plan.edit({ edit: 'relate', routing: 'a', hole: 'h2', relation: { kind: 'crosses on purpose', hole: 'h1' } });
  const [one, , three] = plan.read().routings[0]?.holes ?? [];
  expect(plan.edit({ edit: 'exchange corridors', ...of, with: 'h3' })).toBe('done');
  const ground = ({ tees, turnPoints, green, waypoints, pinned, relations }: NonNullable<typeof one>) => {
    return { tees, turnPoints, green, waypoints, pinned, relations };
  };
  if (!one || !three) throw new Error('no holes');
  expect(hole(plan)).toEqual({ ...one, ...ground(three) });
  expect(hole(plan, 'h3')).toEqual({ ...three, ...ground(one) });
  expect(hole(plan, 'h2')?.relations).toEqual([{ kind: 'crosses on purpose', hole: 'h3' }]);
  expect(plan.read().routings[0]?.loops[0]?.holes).toEqual(['h1', 'h2', 'h3']);
});

test('a locked routing takes none of it', () => {
  const base = smallPlan();
  const locked = { ...base, routings: base.routings.map((routing) => ({ ...routing, locked: true })) };
  const plan = openPlan(createPlanState(locked));
  const answers = [
    plan.edit({
      edit: 'draw hole',
      routing: 'a',
      hole: 'n',
      seat: 'spare',
      tees: { back: { x: 0, y: 0 } },
      turnPoints: [],
    }),
    plan.edit({ edit: 'copy hole', ...of, as: 'n', by: { x: 1, y: 1 } }),
    plan.edit({ edit: 'remove hole', ...of }),
    plan.edit({ edit: 'move holes', routing: 'a', holes: ['h1'], by: { x: 1, y: 1 } }),
    plan.edit({ edit: 'add turn point', ...of, turn: 'n', at: { x: 1, y: 1 }, place: 0 }),
    plan.edit({ edit: 'remove turn point', ...of, turn: 't1' }),
    plan.edit({ edit: 'lengthen', ...of, end: 'green', by: 5 }),
    plan.edit({ edit: 'shape green', ...of, shape: { length: 20, width: 20, bearing: 0 } }),
    plan.edit({ edit: 'propose tee', ...of, teeSet: 'back' }),
    plan.edit({ edit: 'set waypoints', ...of, waypoints: [{ x: 1, y: 1 }] }),
    plan.edit({ edit: 'set corridor', ...of, corridor: { tee: 9 } }),
    plan.edit({ edit: 'exchange corridors', ...of, with: 'h2' }),
    plan.edit({ edit: 'note hole', ...of, note: 'x' }),
  ];
  expect(new Set(answers)).toEqual(new Set(['nothing']));
  expect(plan.read()).toEqual(locked);
});
