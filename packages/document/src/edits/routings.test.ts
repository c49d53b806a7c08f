import { expect, test } from 'vitest';
import { twoLoops } from '../fixtures/two-loops.ts';
import { openPlan } from '../plan-document.ts';
import { createPlanState } from '../server/create-plan-state.ts';

const opened = () => openPlan(createPlanState(twoLoops()));
type Opened = ReturnType<typeof opened>;
const ids = (plan: Opened) => plan.read().routings.map(({ id }) => id);
const copy = { edit: 'copy routing', routing: 'a', as: 'b', name: 'B' } as const;

test('a copied routing is the same but for its id, name and lock, also in what was decided about its findings', () => {
  const plan = opened();
  plan.edit({ edit: 'pin', routing: 'a', hole: 'h1', part: 'green' });
  plan.edit({ edit: 'remove hole', routing: 'a', hole: 'h2' });
  const disposition = {
    routing: 'a',
    finding: 'long-walk|h1|h3',
    kind: 'mitigated by',
    words: 'trees',
    measured: 3,
  } as const;
  plan.edit({ edit: 'decide', disposition });
  plan.edit({ edit: 'lock routing', routing: 'a' });
  expect(plan.edit(copy)).toBe('done');
  const [one, two] = plan.read().routings;
  expect(two).toEqual({ ...one, id: 'b', name: 'B', locked: false });
  expect(plan.read().dispositions).toEqual([disposition, { ...disposition, routing: 'b' }]);
  expect(plan.edit(copy)).toBe('nothing');
  plan.edit({ edit: 'move hole', routing: 'b', hole: 'h1', by: { x: 5, y: 0 } });
  expect(plan.read().routings[0]).toBe(one);
});

test('a started routing is empty, with its loops and rounds, and comes last', () => {
  const plan = opened();
  const start = {
    edit: 'start routing',
    routing: 'b',
    name: 'B',
    loops: [
      { id: 'one', name: 'One', base: 'house' },
      { id: 'two', name: '' },
    ],
    rounds: [{ id: 'all', name: 'All', loops: ['one', 'two', 'three'] }],
  } as const;
  expect(plan.edit(start)).toBe('done');
  expect(plan.read().routings[1]).toEqual({
    id: 'b',
    name: 'B',
    locked: false,
    loops: [
      { id: 'one', name: 'One', base: 'house', holes: [] },
      { id: 'two', name: 'Loop', holes: [] },
    ],
    rounds: [{ id: 'all', name: 'All', loops: ['one', 'two'] }],
    holes: [],
    spare: [],
  });
  expect(plan.edit(start)).toBe('nothing');
  plan.undo();
  expect(plan.read()).toEqual(twoLoops());
  expect(plan.edit(start)).toBe('done');
});

test('a routing is started on a board where nothing is decided yet', () => {
  const plan = openPlan();
  expect(plan.edit({ edit: 'start routing', routing: 'a', name: '', loops: [], rounds: [] })).toBe('done');
  expect(plan.read().routings).toMatchObject([{ id: 'a', name: 'Routing', holes: [] }]);
});

test('a locked routing takes no edit but its unlocking and its copy; the last one is not removed', () => {
  const plan = opened();
  expect(plan.edit({ edit: 'remove routing', routing: 'a' })).toBe('nothing');
  plan.edit(copy);
  expect(plan.edit({ edit: 'lock routing', routing: 'a' })).toBe('done');
  expect(plan.edit({ edit: 'lock routing', routing: 'a' })).toBe('nothing');
  const of = { routing: 'a' } as const;
  const as = { id: 'n', name: 'N' };
  const answers = [
    plan.edit({ edit: 'name routing', ...of, name: 'X' }),
    plan.edit({ edit: 'remove routing', ...of }),
    plan.edit({ edit: 'add loop', ...of, loop: as, after: 'first' }),
    plan.edit({ edit: 'change loop', ...of, loop: 'out', to: { name: 'X' } }),
    plan.edit({ edit: 'remove loop', ...of, loop: 'out' }),
    plan.edit({ edit: 'split loop', ...of, loop: 'out', after: 'h1', as }),
    plan.edit({ edit: 'join loops', ...of, loop: 'out', with: 'home' }),
    plan.edit({ edit: 'reverse loop', ...of, loop: 'out' }),
    plan.edit({ edit: 'copy loop', ...of, loop: 'out', as, holes: [], by: { x: 0, y: 0 } }),
    plan.edit({ edit: 'add round', ...of, round: { ...as, loops: ['out'] }, after: 'first' }),
    plan.edit({ edit: 'change round', ...of, round: 'main', to: { name: 'X' } }),
    plan.edit({ edit: 'remove round', ...of, round: 'main' }),
  ];
  expect(new Set(answers)).toEqual(new Set(['nothing']));
  expect(plan.edit({ edit: 'unlock routing', routing: 'a' })).toBe('done');
  expect(plan.edit({ edit: 'name routing', routing: 'a', name: ' Old course ' })).toBe('done');
  expect(plan.read().routings[0]?.name).toBe('Old course');
  expect(plan.edit({ edit: 'remove routing', routing: 'a' })).toBe('done');
  expect(ids(plan)).toEqual(['b']);
  expect(plan.edit({ edit: 'remove routing', routing: 'a' })).toBe('gone');
  plan.undo();
  expect(ids(plan)).toEqual(['a', 'b']);
});
