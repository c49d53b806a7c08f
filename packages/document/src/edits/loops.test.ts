import { LIMITS } from '@loopwright/model';
import { expect, test } from 'vitest';
import { twoLoops } from '../fixtures/two-loops.ts';
import { openPlan } from '../plan-document.ts';
import { createPlanState } from '../server/create-plan-state.ts';

const opened = () => openPlan(createPlanState(twoLoops()));
type Opened = ReturnType<typeof opened>;
const of = { routing: 'a' } as const;
const routing = (plan: Opened) => {
  const [first] = plan.read().routings;
  if (!first) throw new Error('no routing');
  return first;
};
const loops = (plan: Opened) => Object.fromEntries(routing(plan).loops.map(({ id, holes }) => [id, holes]));
const rounds = (plan: Opened) => Object.fromEntries(routing(plan).rounds.map((round) => [round.id, round.loops]));
const split = { edit: 'split loop', ...of, loop: 'out', after: 'h1', as: { id: 'rest', name: 'Rest' } } as const;

test('a loop split after a hole: the rest follows it in the list and in every round, so that every round plays as before', () => {
  const plan = opened();
  expect(plan.edit(split)).toBe('done');
  expect(Object.keys(loops(plan))).toEqual(['out', 'rest', 'home']);
  expect(loops(plan)).toEqual({ out: ['h1'], rest: ['h2', 'h3'], home: ['h5', 'h6', 'h7'] });
  expect(rounds(plan)).toEqual({ main: ['out', 'rest', 'home'], front: ['out', 'rest'], back: ['home'] });
  expect(plan.edit({ ...split, after: 'h6', as: { id: 'x', name: 'X' } })).toBe('gone');
  expect(plan.edit({ ...split, as: { id: 'x', name: 'X' } })).toBe('nothing'); // nothing comes after h1 now
});

test('split and joined again is the same plan', () => {
  const plan = opened();
  plan.edit(split);
  expect(plan.edit({ edit: 'join loops', ...of, loop: 'out', with: 'rest' })).toBe('done');
  expect(plan.read()).toEqual(twoLoops());
});

test('joined loops: the holes follow, a round of both plays the first, a round of the second plays the first instead', () => {
  const plan = opened();
  expect(plan.edit({ edit: 'join loops', ...of, loop: 'out', with: 'home' })).toBe('done');
  expect(loops(plan)).toEqual({ out: ['h1', 'h2', 'h3', 'h5', 'h6', 'h7'] });
  expect(rounds(plan)).toEqual({ main: ['out'], front: ['out'], back: ['out'] });
  plan.undo();
  expect(plan.read()).toEqual(twoLoops());
  expect(plan.edit({ edit: 'join loops', ...of, loop: 'out', with: 'out' })).toBe('nothing');
  expect(plan.edit({ edit: 'join loops', ...of, loop: 'out', with: 'nowhere' })).toBe('gone');
});

test('a reversed loop plays its last hole first, every hole from its green, and walks back by the same points', () => {
  const plan = opened();
  plan.edit({
    edit: 'set waypoints',
    ...of,
    hole: 'h1',
    waypoints: [
      { x: 1, y: 1 },
      { x: 2, y: 2 },
    ],
  });
  const before = plan.read();
  expect(plan.edit({ edit: 'reverse loop', ...of, loop: 'out' })).toBe('done');
  expect(loops(plan).out).toEqual(['h3', 'h2', 'h1']);
  const [one, two] = routing(plan).holes;
  expect(one?.green?.centre).toEqual({ x: 0, y: 0 });
  expect(one?.tees.back).toEqual({ x: 120, y: 400 });
  // From 2 to 1 now, where one walked from 1 to 2.
  expect(two?.waypoints).toEqual([
    { x: 2, y: 2 },
    { x: 1, y: 1 },
  ]);
  expect(plan.edit({ edit: 'reverse loop', ...of, loop: 'out' })).toBe('done');
  expect(plan.read()).toEqual(before);
});

test('a loop with holes in the same place is reversed too: only those get fresh keys', () => {
  const base = twoLoops();
  const plan = openPlan(
    createPlanState({
      ...base,
      routings: base.routings.map((one) => ({
        ...one,
        holes: one.holes.map((hole) => (hole.id === 'h2' ? { ...hole, seat: { ...hole.seat, key: 'a0' } } : hole)),
      })),
    }),
  );
  plan.edit({ edit: 'reverse loop', ...of, loop: 'out' });
  expect(loops(plan).out).toEqual(['h3', 'h2', 'h1']);
  expect(routing(plan).holes.find(({ id }) => id === 'h1')?.seat.key).toBe('a2');
});

test('a removed loop leaves its holes in the tray, in their order, and every round loses it', () => {
  const plan = opened();
  expect(plan.edit({ edit: 'remove loop', ...of, loop: 'home' })).toBe('done');
  expect(routing(plan).spare).toEqual(['h4', 'h5', 'h6', 'h7']);
  expect(rounds(plan)).toEqual({ main: ['out'], front: ['out'] });
  plan.edit({ edit: 'remove loop', ...of, loop: 'out' });
  // One round stays, with nothing to play.
  expect(rounds(plan)).toEqual({ main: [] });
  expect(routing(plan).spare.length).toBe(7);
  plan.undo();
  plan.undo();
  expect(plan.read()).toEqual(twoLoops());
});

test('a copied loop lies beside the first, with copies of its holes and of what is meant between them', () => {
  const plan = opened();
  plan.edit({ edit: 'relate', ...of, hole: 'h1', relation: { kind: 'crosses on purpose', hole: 'h2' } });
  plan.edit({ edit: 'relate', ...of, hole: 'h1', relation: { kind: 'crosses on purpose', hole: 'h5' } });
  const copy = {
    edit: 'copy loop',
    ...of,
    loop: 'out',
    as: { id: 'again', name: 'Again' },
    holes: [
      { hole: 'h1', as: 'c1' },
      { hole: 'h2', as: 'c2' },
      { hole: 'h5', as: 'c5' },
    ],
    by: { x: 0, y: 900 },
  } as const;
  expect(plan.edit(copy)).toBe('done');
  expect(loops(plan)).toMatchObject({ out: ['h1', 'h2', 'h3'], again: ['c1', 'c2'] });
  const copied = routing(plan).holes.find(({ id }) => id === 'c1');
  expect(copied?.tees.back).toEqual({ x: 0, y: 900 });
  expect(copied?.relations).toEqual([{ kind: 'crosses on purpose', hole: 'c2' }]);
  expect(plan.edit(copy)).toBe('nothing');
  expect(plan.edit({ ...copy, as: { id: 'third', name: '' }, holes: [{ hole: 'h1', as: 'h3' }] })).toBe('nothing');
});

test('loops and rounds are added, changed and removed, within what a routing can have', () => {
  const plan = opened();
  const third = { id: 'third', name: '  Third\n', base: 'house' };
  expect(plan.edit({ edit: 'add loop', ...of, loop: third, after: 'out' })).toBe('done');
  expect(plan.edit({ edit: 'add loop', ...of, loop: third, after: 'out' })).toBe('nothing');
  expect(routing(plan).loops[1]).toEqual({ id: 'third', name: 'Third', base: 'house', holes: [] });
  plan.edit({ edit: 'change loop', ...of, loop: 'third', to: { name: 'C', base: null } });
  expect(routing(plan).loops[1]).toEqual({ id: 'third', name: 'C', holes: [] });
  const round = { id: 'new', name: 'B + C', loops: ['home', 'third', 'nowhere'] };
  expect(plan.edit({ edit: 'add round', ...of, round, after: 'main' })).toBe('done');
  expect(routing(plan).rounds[1]).toEqual({ ...round, loops: ['home', 'third'] });
  plan.edit({ edit: 'change round', ...of, round: 'new', to: { name: 'C + A', loops: ['third', 'out'] } });
  expect(routing(plan).rounds[1]).toEqual({ id: 'new', name: 'C + A', loops: ['third', 'out'] });
  expect(plan.edit({ edit: 'change round', ...of, round: 'new', to: { name: ' ', loops: ['nowhere'] } })).toBe(
    'nothing',
  );
  for (const id of ['new', 'main', 'front']) expect(plan.edit({ edit: 'remove round', ...of, round: id })).toBe('done');
  expect(plan.edit({ edit: 'remove round', ...of, round: 'back' })).toBe('nothing');
  for (let i = 3; i < LIMITS.loopsPerRouting; i++)
    expect(plan.edit({ edit: 'add loop', ...of, loop: { id: `l${i}`, name: '' }, after: 'first' })).toBe('done');
  expect(plan.edit({ edit: 'add loop', ...of, loop: { id: 'more', name: '' }, after: 'first' })).toBe('nothing');
  expect(plan.edit({ ...split, loop: 'home', after: 'h5' })).toBe('nothing');
});
