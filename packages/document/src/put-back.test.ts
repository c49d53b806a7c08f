import { seededRandom } from '@loopwright/model';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import * as Y from 'yjs';
import type { PlanDocument } from './contract.ts';
import type { NamedEdit } from './edits/named-edit.ts';
import { twoLoops } from './fixtures/two-loops.ts';
import { openPlan, SharedPlan } from './plan-document.ts';
import { createPlanState } from './server/create-plan-state.ts';

const docOf = (plan: PlanDocument): Y.Doc => {
  if (!(plan instanceof SharedPlan)) throw new Error('not a shared plan');
  return plan.doc;
};
const twoPages = () => {
  const state = createPlanState(twoLoops());
  const [ada, grace] = [openPlan(state, { client: 1 }), openPlan(state, { client: 2 })];
  const meet = () => {
    Y.applyUpdate(docOf(ada), grace.state());
    Y.applyUpdate(docOf(grace), ada.state());
  };
  return { ada, grace, meet };
};
const green = (plan: PlanDocument, id = 'h1') =>
  plan.read().routings[0]?.holes.find((hole) => hole.id === id)?.green?.centre;
const moveGreen = (x: number, hole = 'h1'): NamedEdit => {
  return { edit: 'move part', routing: 'a', hole, part: 'green', to: { x, y: 1 } };
};

test('what was done is listed with numbers that stay, and the list stays the same until it changes', () => {
  const { ada } = twoPages();
  expect(ada.done()).toEqual([]);
  ada.edit(moveGreen(1));
  ada.edit(moveGreen(2));
  const list = ada.done();
  expect(list.map(({ number, edit }) => ({ number, edit }))).toEqual([
    { number: 1, edit: moveGreen(1) },
    { number: 2, edit: moveGreen(2) },
  ]);
  ada.edit(moveGreen(2)); // changes nothing
  ada.read();
  expect(ada.done()).toBe(list);
  ada.undo();
  ada.redo();
  expect(ada.done().map(({ number }) => number)).toEqual([1, 2]);
});

test('everything since a step is put back as one step; undo brings it all again, to be undone one by one', () => {
  const { ada } = twoPages();
  ada.edit(moveGreen(1));
  const kept = ada.read();
  ada.edit({
    edit: 'draw hole',
    routing: 'a',
    hole: 'new',
    seat: 'spare',
    tees: { back: { x: 1, y: 2 } },
    turnPoints: [],
  });
  ada.edit({ edit: 'split loop', routing: 'a', loop: 'out', after: 'h1', as: { id: 'rest', name: 'Rest' } });
  ada.edit(moveGreen(5));
  const tried = ada.read();
  expect(ada.putBack(2)).toEqual({ kind: 'put back', steps: 3, overtaken: 0 });
  expect(ada.read()).toEqual(kept);
  expect(ada.steps().undo).toEqual({ edit: 'put back what was tried', steps: 3 });
  expect(ada.done().map(({ number }) => number)).toEqual([1, 5]);
  expect(ada.undo()).toMatchObject({ kind: 'undone', step: { edit: 'put back what was tried' } });
  expect(ada.read()).toEqual(tried);
  expect(ada.done().map(({ number }) => number)).toEqual([1, 2, 3, 4]);
  ada.undo();
  expect(green(ada)).toEqual({ x: 1, y: 1 });
  ada.redo();
  ada.redo();
  expect(ada.read()).toEqual(kept);
  expect(ada.done().map(({ number }) => number)).toEqual([1, 5]);
});

test('what was put back can be put back together with what came after', () => {
  const { ada } = twoPages();
  ada.edit(moveGreen(1));
  ada.edit(moveGreen(2));
  ada.putBack(2);
  ada.edit(moveGreen(9, 'h2'));
  expect(ada.putBack(3)).toEqual({ kind: 'put back', steps: 2, overtaken: 0 });
  expect(green(ada)).toEqual({ x: 2, y: 1 });
  ada.undo();
  expect(green(ada)).toEqual({ x: 1, y: 1 });
  expect(green(ada, 'h2')).toEqual({ x: 9, y: 1 });
  expect(ada.putBack(1)).toMatchObject({ kind: 'put back' });
  expect(ada.read()).toEqual(twoLoops());
});

test('a step before something that was put back takes all of it back', () => {
  const { ada } = twoPages();
  ada.edit(moveGreen(1));
  ada.edit(moveGreen(2));
  ada.edit(moveGreen(3, 'h3'));
  ada.putBack(2);
  ada.edit(moveGreen(4));
  expect(ada.putBack(1)).toEqual({ kind: 'put back', steps: 3, overtaken: 0 });
  expect(ada.read()).toEqual(twoLoops());
  ada.undo();
  expect(green(ada)).toEqual({ x: 4, y: 1 });
  expect(ada.done().map(({ number }) => number)).toEqual([1, 4, 5]);
});

test('alone, nothing is ever lost: after any edits, undos and put-backs, putting back the first step is the plan one began with', () => {
  const does = fc.constantFrom('move', 'move', 'move', 'undo', 'redo', 'put back');
  fc.assert(
    fc.property(fc.array(fc.tuple(does, fc.nat()), { maxLength: 30 }), (steps) => {
      const { ada } = twoPages();
      for (const [what, nat] of steps) {
        const done = ada.done();
        if (what === 'move') ada.edit(moveGreen(nat % 50, `h${1 + (nat % 3)}`));
        if (what === 'undo') ada.undo();
        if (what === 'redo') ada.redo();
        if (what === 'put back') ada.putBack(done[nat % done.length]?.number ?? 0);
      }
      const [first] = ada.done();
      const before = ada.read();
      if (!first) return;
      ada.putBack(first.number);
      const isPutBack = first.edit.edit === 'put back what was tried';
      if (!isPutBack) expect(ada.read()).toEqual(twoLoops());
      ada.undo();
      expect(ada.read()).toEqual(before);
    }),
    { numRuns: 80 },
  );
});

test('others’ work stays: a value that is theirs now is counted once, however often I had set it', () => {
  const { ada, grace, meet } = twoPages();
  ada.edit(moveGreen(1));
  ada.edit(moveGreen(2));
  ada.edit({ edit: 'name hole', routing: 'a', hole: 'h1', name: 'Mine' });
  meet();
  grace.edit(moveGreen(7));
  grace.edit({ edit: 'set par', routing: 'a', hole: 'h1', sex: 'men', par: 5 });
  meet();
  expect(ada.putBack(1)).toEqual({ kind: 'put back', steps: 3, overtaken: 1 });
  meet();
  for (const page of [ada, grace]) {
    expect(green(page)).toEqual({ x: 7, y: 1 });
    expect(page.read().routings[0]?.holes[0]).toMatchObject({ par: { men: 5 } });
    expect(page.read().routings[0]?.holes[0]?.name).toBeUndefined();
  }
});

test('a step that is not mine, was taken back, or never was, puts nothing back', () => {
  const { ada, grace } = twoPages();
  grace.edit(moveGreen(1));
  expect(ada.putBack(1)).toEqual({ kind: 'nothing' });
  ada.edit(moveGreen(2));
  ada.undo();
  expect(ada.putBack(1)).toEqual({ kind: 'nothing' });
  expect(ada.putBack(Number.NaN)).toEqual({ kind: 'nothing' });
  expect(ada.steps().redo).toEqual(moveGreen(2));
});

test('five hundred steps can be put back at once; older ones are forgotten', () => {
  const { ada } = twoPages();
  for (let i = 1; i <= 520; i++) ada.edit(moveGreen(i));
  expect(ada.done().length).toBe(500);
  expect(ada.putBack(20)).toEqual({ kind: 'nothing' });
  expect(ada.putBack(21)).toEqual({ kind: 'put back', steps: 500, overtaken: 0 });
  expect(green(ada)).toEqual({ x: 20, y: 1 });
  ada.undo();
  let undone = 0;
  while (ada.undo().kind === 'undone') undone += 1;
  expect(undone).toBe(500);
});

test('undoing a step whose hole somebody else has removed says so, and the hole stays away', () => {
  const { ada, grace, meet } = twoPages();
  ada.edit(moveGreen(1));
  meet();
  grace.edit({ edit: 'remove hole', routing: 'a', hole: 'h1' });
  meet();
  const before = ada.read().routings[0]?.loops;
  expect(ada.undo()).toEqual({ kind: 'undone', step: moveGreen(1), overtaken: 0, gone: ['h1'] });
  expect(ada.read().routings[0]?.loops).toEqual(before);
  expect(ada.redo()).toMatchObject({ kind: 'redone', gone: ['h1'] });
  meet();
  expect(grace.undo()).toEqual({ kind: 'undone', step: expect.anything(), overtaken: 0 });
  expect(green(grace)).toEqual({ x: 1, y: 1 });
});

test('a hole I drew and another has worked on since stays whole when I undo its drawing', () => {
  const { ada, grace, meet } = twoPages();
  ada.edit({ edit: 'move hole', routing: 'a', hole: 'h2', by: { x: 1, y: 0 } });
  ada.edit({
    edit: 'draw hole',
    routing: 'a',
    hole: 'new',
    seat: { loop: 'out', after: 'h1' },
    tees: { back: { x: 0, y: 0 } },
    turnPoints: [],
    green: { centre: { x: 0, y: 300 }, length: 30, width: 20, bearing: 0 },
  });
  meet();
  grace.edit(moveGreen(77, 'new'));
  meet();
  const before = ada.read();
  expect(ada.undo()).toMatchObject({ kind: 'undone', overtaken: 4 });
  expect(ada.read()).toBe(before);
  expect(ada.undo()).toMatchObject({ kind: 'undone', overtaken: 0 });
});

test('a routing I copied and another works in does not go from under their hands, whatever I undo', () => {
  const { ada, grace, meet } = twoPages();
  ada.edit({ edit: 'copy routing', routing: 'a', as: 'b', name: 'B' });
  meet();
  grace.edit({
    edit: 'draw hole',
    routing: 'b',
    hole: 'new',
    seat: 'spare',
    tees: { back: { x: 0, y: 0 } },
    turnPoints: [],
  });
  meet();
  const before = ada.read();
  ada.putBack(1);
  expect(ada.read()).toBe(before);
  ada.undo();
  grace.undo();
  meet();
  ada.undo();
  expect(ada.read()).toEqual(twoLoops());
});

test('whatever two people do, undo and put back in whatever order, what the other set last is never taken back', () => {
  const step = fc.record({
    who: fc.constantFrom('ada', 'grace'),
    does: fc.constantFrom('move', 'move', 'move', 'undo', 'redo', 'put back', 'meet'),
    hole: fc.constantFrom('h1', 'h2'),
  });
  fc.assert(
    fc.property(fc.array(step, { maxLength: 30 }), fc.nat(), (steps, seed) => {
      const random = seededRandom(seed);
      const { meet, ...pages } = twoPages();
      const authors = new Map<string, Set<string>>();
      for (const { who, does, hole } of steps) {
        const page = who === 'ada' ? pages.ada : pages.grace;
        meet();
        const before = { h1: green(page, 'h1'), h2: green(page, 'h2') };
        const done = page.done();
        if (does === 'move') page.edit(moveGreen(Math.round(random() * 1e6), hole));
        if (does === 'undo') page.undo();
        if (does === 'redo') page.redo();
        if (does === 'put back') page.putBack(done[Math.floor(random() * done.length)]?.number ?? 0);
        for (const id of ['h1', 'h2'] as const) {
          const [was, is] = [before[id]?.x, green(page, id)?.x];
          if (was === is) continue;
          const chosenBy = authors.get(`${id} ${was}`);
          if (does !== 'move' && chosenBy) expect([...chosenBy]).toContain(who);
          authors.set(`${id} ${is}`, (authors.get(`${id} ${is}`) ?? new Set()).add(who));
        }
      }
      meet();
      expect(pages.ada.read()).toEqual(pages.grace.read());
    }),
    { numRuns: 60 },
  );
});
