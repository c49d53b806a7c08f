import { expect, test } from 'vitest';
import { smallPlan } from '../fixtures/small-plan.ts';
import { openPlan } from '../plan-document.ts';
import { createPlanState } from '../server/create-plan-state.ts';

const opened = () => openPlan(createPlanState(smallPlan()));
type Opened = ReturnType<typeof opened>;
const routing = (plan: Opened) => plan.read().routings[0];
const hole = (plan: Opened, id: string) => routing(plan)?.holes.find((one) => one.id === id);
const order = (plan: Opened) => routing(plan)?.loops[0]?.holes;

const green = { centre: { x: 40, y: 380 }, length: 30, width: 22, bearing: 0.3 };
const drawn = {
  edit: 'draw hole',
  routing: 'a',
  hole: 'new',
  seat: { loop: 'out', after: 'h1' },
  tees: { back: { x: 0, y: 0 } },
  turnPoints: [
    { id: 'first', at: { x: 5, y: 200 } },
    { id: 'then', at: { x: 20, y: 300 } },
  ],
  green,
} as const;

test('a drawn hole takes the place after the one it follows, and the others move on', () => {
  const plan = opened();
  expect(plan.edit(drawn)).toBe('done');
  expect(order(plan)).toEqual(['h1', 'new', 'h2', 'h3']);
  expect(hole(plan, 'new')).toMatchObject({
    tees: drawn.tees,
    turnPoints: drawn.turnPoints,
    green,
    verdict: 'undecided',
    par: { men: 'by length', women: 'by length' },
  });
  plan.undo();
  expect(plan.read()).toEqual(smallPlan());
});

test('half a hole may be drawn: from its green back, or from its tee on', () => {
  const plan = opened();
  const { green: _, ...open } = drawn;
  expect(plan.edit({ ...open, hole: 'half', seat: 'spare' })).toBe('done');
  expect(plan.edit({ ...drawn, hole: 'back', tees: {}, turnPoints: [], seat: 'spare' })).toBe('done');
  expect(routing(plan)?.spare).toEqual(['h4', 'half', 'back']);
  expect(hole(plan, 'half')?.green).toBeUndefined();
  expect(hole(plan, 'back')?.tees).toEqual({});
});

test('a drawn hole is never lost for its place: without its neighbour it comes last, without the loop it is spare', () => {
  const plan = opened();
  plan.edit({ edit: 'take out', routing: 'a', hole: 'h1' });
  expect(plan.edit(drawn)).toBe('done');
  expect(order(plan)).toEqual(['h2', 'h3', 'new']);
  expect(plan.edit({ ...drawn, hole: 'other', seat: { loop: 'nowhere', after: 'first' } })).toBe('done');
  expect(routing(plan)?.spare.at(-1)).toBe('other');
  expect(plan.edit({ ...drawn, routing: 'nowhere' })).toBe('gone');
});

test('nothing is drawn over a hole that is there; over a removed one nothing of the old shows through', () => {
  const plan = opened();
  expect(plan.edit({ ...drawn, hole: 'h2' })).toBe('nothing');
  plan.edit({ edit: 'set par', routing: 'a', hole: 'h2', sex: 'men', par: 5 });
  plan.edit({ edit: 'remove hole', routing: 'a', hole: 'h2' });
  const before = plan.read();
  expect(plan.edit({ ...drawn, hole: 'h2' })).toBe('done');
  expect(hole(plan, 'h2')).toMatchObject({ tees: drawn.tees, turnPoints: drawn.turnPoints, par: { men: 'by length' } });
  plan.undo();
  expect(plan.read()).toEqual(before);
});

test('a line without anything on it, four turns, or a tee of a set that is gone draw nothing of that', () => {
  const plan = opened();
  expect(plan.edit({ ...drawn, tees: { gone: { x: 1, y: 1 } } })).toBe('done');
  expect(hole(plan, 'new')?.tees).toEqual({});
  const { green: _, ...open } = drawn;
  expect(plan.edit({ ...open, hole: 'none', tees: {}, turnPoints: [] })).toBe('nothing');
  const turnPoints = ['a', 'b', 'c', 'd'].map((id) => ({ id, at: { x: 0, y: 0 } }));
  expect(plan.edit({ ...drawn, hole: 'bent', turnPoints })).toBe('nothing');
  expect(() => plan.edit({ ...drawn, hole: 'off', tees: { back: { x: Number.NaN, y: 0 } } })).toThrow(RangeError);
});

test('a copy lies beside the hole, in the tray, with its par and shape but not its verdict, pins and relations', () => {
  const plan = opened();
  const of = { routing: 'a', hole: 'h1' } as const;
  plan.edit({ edit: 'set par', ...of, sex: 'men', par: 4 });
  plan.edit({ edit: 'judge', ...of, verdict: 'keeper', reason: '' });
  plan.edit({ edit: 'pin', ...of, part: 'green' });
  plan.edit({ edit: 'relate', ...of, relation: { kind: 'crosses on purpose', hole: 'h2' } });
  plan.edit({ edit: 'set waypoints', ...of, waypoints: [{ x: 1, y: 2 }] });
  expect(plan.edit({ edit: 'copy hole', ...of, as: 'twin', by: { x: 50, y: -10 } })).toBe('done');
  expect(hole(plan, 'twin')).toMatchObject({
    seat: { in: 'spare' },
    tees: { back: { x: 50, y: -10 }, forward: { x: 53, y: 30 } },
    turnPoints: [
      { id: 't1', at: { x: 60, y: 190 } },
      { id: 't2', at: { x: 110, y: 320 } },
    ],
    green: { centre: { x: 170, y: 390 }, length: 30, width: 24, bearing: 0.5 },
    par: { men: 4, women: 'by length' },
    verdict: 'undecided',
    pinned: [],
    relations: [],
    waypoints: [{ x: 51, y: -8 }],
  });
  expect(plan.edit({ edit: 'copy hole', ...of, as: 'twin', by: { x: 0, y: 0 } })).toBe('nothing');
  expect(plan.edit({ edit: 'copy hole', ...of, as: 'far', by: { x: 1e6, y: 0 } })).toBe('nothing');
});

test('a removed hole is off the plan for every edit, and undo brings it back to its place', () => {
  const plan = opened();
  const of = { routing: 'a', hole: 'h2' } as const;
  expect(plan.edit({ edit: 'remove hole', ...of })).toBe('done');
  expect(order(plan)).toEqual(['h1', 'h3']);
  expect(plan.edit({ edit: 'remove hole', ...of })).toBe('gone');
  expect(plan.edit({ edit: 'lengthen', ...of, end: 'green', by: 5 })).toBe('gone');
  plan.undo();
  expect(plan.read()).toEqual(smallPlan());
});
