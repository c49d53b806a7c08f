// Loops speak of bases, holes of tee sets, decisions of routings. When those are taken away the plan does not speak of
// them any more, and it does again when they are back; so a board is never written to a file with loose ends.
import { canonicalJson, parsePlan } from '@loopwright/model';
import { expect, test } from 'vitest';
import type { NamedEdit } from '../edits/named-edit.ts';
import { smallPlan } from '../fixtures/small-plan.ts';
import { openPlan } from '../plan-document.ts';
import { createPlanState } from '../server/create-plan-state.ts';

const decided = { kind: 'to be checked by', words: 'the surveyor', measured: 310 } as const;
const start = () => {
  const plan = smallPlan();
  const [routing] = plan.routings;
  if (!routing) throw new Error('the small plan has a routing');
  return openPlan(
    createPlanState({
      ...plan,
      routings: [routing, { ...routing, id: 'b', name: 'B', locked: true }],
      dispositions: [
        { routing: 'a', finding: 'long-walk|h1>h2', ...decided },
        { routing: 'b', finding: 'feature-near|h1|pond', ...decided },
      ],
    }),
  );
};

test.each<NamedEdit>([
  { edit: 'remove base', base: 'house' },
  { edit: 'remove tee set', teeSet: 'forward' },
  { edit: 'remove features', features: ['pond'] },
  { edit: 'remove routing', routing: 'a' },
])('after $edit the plan reads back as it is, and undo brings back all that spoke of it', (edit) => {
  const plan = start();
  const before = plan.read();
  expect(plan.edit(edit)).toBe('done');
  const after = plan.read();
  expect(parsePlan(JSON.parse(canonicalJson(after)))).toMatchObject({ kind: 'plan', plan: after, notes: [] });
  expect(openPlan(plan.state()).read()).toEqual(after);
  plan.undo();
  expect(plan.read()).toEqual(before);
});

test('a loop whose base was taken away has none, in a locked routing too', () => {
  const plan = start();
  plan.edit({ edit: 'remove base', base: 'house' });
  for (const routing of plan.read().routings) expect(routing.loops[0]).not.toHaveProperty('base');
});

test('a round is of the loops that are there, whatever took one away', () => {
  const plan = start();
  plan.edit({
    edit: 'add round',
    routing: 'a',
    round: { id: 'two', name: 'Two', loops: ['out', 'in'] },
    after: 'main',
  });
  plan.edit({ edit: 'add loop', routing: 'a', loop: { id: 'in', name: 'In' }, after: 'out' });
  plan.edit({ edit: 'change round', routing: 'a', round: 'two', to: { loops: ['out', 'in'] } });
  plan.undo();
  plan.undo();
  const after = plan.read();
  expect(parsePlan(JSON.parse(canonicalJson(after)))).toMatchObject({ kind: 'plan', plan: after, notes: [] });
});

test('the tees of a set that was taken away are not there; the hole keeps them for when it comes back', () => {
  const plan = start();
  plan.edit({ edit: 'remove tee set', teeSet: 'forward' });
  expect(plan.read().routings[0]?.holes.map(({ tees }) => Object.keys(tees))).toEqual(Array(4).fill(['back']));
  plan.edit({ edit: 'move hole', routing: 'a', hole: 'h1', by: { x: 10, y: 0 } });
  plan.undo();
  plan.undo();
  expect(plan.read().routings[0]?.holes[0]?.tees).toEqual({ back: { x: 0, y: 0 }, forward: { x: 3, y: 40 } });
});

test('a decision about a finding at a feature outlives the feature; one of a routing goes and comes with it', () => {
  const plan = start();
  plan.edit({ edit: 'remove features', features: ['pond'] });
  expect(plan.read().dispositions).toHaveLength(2);
  plan.edit({ edit: 'remove routing', routing: 'a' });
  expect(plan.read().dispositions.map(({ routing }) => routing)).toEqual(['b']);
  plan.undo();
  expect(plan.read().dispositions).toHaveLength(2);
});

test('moving a base, or renaming tees, leaves every routing the very object it was', () => {
  const plan = start();
  const { routings } = plan.read();
  plan.edit({ edit: 'change base', base: 'house', to: { apron: { x: 7, y: 7 } } });
  plan.edit({ edit: 'change tee set', teeSet: 'forward', to: { name: 'Short' } });
  plan.edit({ edit: 'add mark', mark: { id: 'm1', kind: 'tee site', at: { x: 0, y: 0 }, verdict: 'natural' } });
  expect(plan.read().routings).toBe(routings);
});

test('ten tee sets come and go, and a hole still shows the tees of those that are there', () => {
  const plan = start();
  for (let n = 0; n < 10; n++) {
    const teeSet = `a${n}`;
    plan.edit({ edit: 'add tee set', teeSet: { id: teeSet, name: teeSet, player: 'bogey man' }, after: 'back' });
    plan.edit({ edit: 'move part', routing: 'a', hole: 'h1', part: `tee:${teeSet}`, to: { x: n, y: n } });
    plan.edit({ edit: 'remove tee set', teeSet });
  }
  expect(Object.keys(plan.read().routings[0]?.holes[0]?.tees ?? {})).toEqual(['back', 'forward']);
  expect(plan.unread()).toEqual([]);
});
