import { holeOf } from '@loopwright/model';
import { expect, test } from 'vitest';
import * as Y from 'yjs';
import type { PlanDocument } from './contract.ts';
import { smallPlan } from './fixtures/small-plan.ts';
import { openPlan, SharedPlan } from './plan-document.ts';
import { createPlanState } from './server/create-plan-state.ts';

const docOf = (plan: PlanDocument): Y.Doc => {
  if (!(plan instanceof SharedPlan)) throw new Error('not a shared plan');
  return plan.doc;
};
/** Two pages on one board; `meet` gives each what the other has. */
const twoPages = () => {
  const state = createPlanState(smallPlan());
  const [ada, grace] = [openPlan(state, { client: 1 }), openPlan(state, { client: 2 })];
  const meet = () => {
    Y.applyUpdate(docOf(ada), grace.state());
    Y.applyUpdate(docOf(grace), ada.state());
  };
  return { ada, grace, meet };
};
const of = { routing: 'a', hole: 'h1' } as const;
const green = (plan: PlanDocument) => {
  const [routing] = plan.read().routings;
  return routing && holeOf(routing, 'h1')?.green?.centre;
};
const order = (plan: PlanDocument) => plan.read().routings[0]?.loops[0]?.holes;
const moveGreen = (x: number) => ({ edit: 'move part', ...of, part: 'green', to: { x, y: 1 } }) as const;

test('undo takes back the last step and redo does it again', () => {
  const { ada } = twoPages();
  ada.edit(moveGreen(1));
  ada.edit(moveGreen(2));
  expect(ada.undo()).toEqual({ kind: 'undone', step: moveGreen(2), overtaken: 0 });
  expect(green(ada)).toEqual({ x: 1, y: 1 });
  ada.undo();
  expect(green(ada)).toEqual({ x: 120, y: 400 });
  expect(ada.undo()).toEqual({ kind: 'nothing' });
  ada.redo();
  expect(ada.redo()).toEqual({ kind: 'redone', step: moveGreen(2), overtaken: 0 });
  expect(green(ada)).toEqual({ x: 2, y: 1 });
});

test('one undoes one’s own last step, whatever others did since', () => {
  const { ada, grace, meet } = twoPages();
  ada.edit(moveGreen(1));
  meet();
  grace.edit({ edit: 'set par', ...of, sex: 'men', par: 5 });
  meet();
  expect(ada.undo()).toMatchObject({ kind: 'undone', overtaken: 0 });
  meet();
  expect(green(grace)).toEqual({ x: 120, y: 400 });
  expect(grace.read().routings[0]?.holes[0]?.par.men).toBe(5);
});

test('a value somebody else has changed since stays theirs, and is counted', () => {
  const { ada, grace, meet } = twoPages();
  ada.edit(moveGreen(1));
  meet();
  grace.edit(moveGreen(7));
  meet();
  expect(ada.undo()).toMatchObject({ kind: 'undone', overtaken: 1 });
  meet();
  expect(green(ada)).toEqual({ x: 7, y: 1 });
  expect(green(grace)).toEqual({ x: 7, y: 1 });
});

test('of a moved hole only the parts nobody touched since go back', () => {
  const { ada, grace, meet } = twoPages();
  ada.edit({ edit: 'move hole', ...of, by: { x: 10, y: 0 } });
  meet();
  grace.edit(moveGreen(7));
  meet();
  expect(ada.undo()).toMatchObject({ kind: 'undone', overtaken: 1 });
  const [routing] = ada.read().routings;
  expect(routing && holeOf(routing, 'h1')).toMatchObject({
    tees: { back: { x: 0, y: 0 } },
    green: { centre: { x: 7, y: 1 } },
  });
});

test('two tabs of one person undo each their own', () => {
  const { ada: tab, grace: otherTab, meet } = twoPages();
  tab.edit(moveGreen(1));
  meet();
  expect(otherTab.undo()).toEqual({ kind: 'nothing' });
});

test('a new edit ends what could be done again', () => {
  const { ada } = twoPages();
  ada.edit(moveGreen(1));
  ada.undo();
  expect(ada.steps()).toEqual({ redo: moveGreen(1) });
  ada.edit(moveGreen(3));
  expect(ada.steps()).toEqual({ undo: moveGreen(3) });
});

test('two people who drag the two ends of one hole at once both keep their move', () => {
  const { ada, grace, meet } = twoPages();
  ada.edit(moveGreen(1));
  grace.edit({ edit: 'move part', ...of, part: 'tee:back', to: { x: -50, y: -60 } });
  meet();
  for (const page of [ada, grace]) {
    const [routing] = page.read().routings;
    expect(routing && holeOf(routing, 'h1')).toMatchObject({
      tees: { back: { x: -50, y: -60 } },
      green: { centre: { x: 1, y: 1 } },
    });
  }
});

test('two people who renumber at once lose no hole and double none', () => {
  const { ada, grace, meet } = twoPages();
  ada.edit({ edit: 'move in the round', ...of, loop: 'out', after: 'h3' });
  grace.edit({ edit: 'move in the round', ...of, loop: 'out', after: 'h2' });
  grace.edit({ edit: 'move in the round', routing: 'a', hole: 'h3', loop: 'out', after: 'first' });
  meet();
  expect(order(ada)).toEqual(order(grace));
  expect([...(order(ada) ?? [])].sort()).toEqual(['h1', 'h2', 'h3']);
});

test('two people who put two holes into the same place make equal keys, and the next edit there makes room', () => {
  const { ada, grace, meet } = twoPages();
  ada.edit({ edit: 'move in the round', routing: 'a', hole: 'h2', loop: 'out', after: 'first' });
  grace.edit({ edit: 'move in the round', routing: 'a', hole: 'h3', loop: 'out', after: 'first' });
  meet();
  expect(order(ada)).toEqual(['h2', 'h3', 'h1']); // equal keys go by id
  expect(ada.edit({ edit: 'move in the round', routing: 'a', hole: 'h1', loop: 'out', after: 'h2' })).toBe('done');
  meet();
  expect(order(grace)).toEqual(['h2', 'h1', 'h3']);
});

test('an edit to a hole that is taken out meanwhile is not lost', () => {
  const { ada, grace, meet } = twoPages();
  ada.edit({ edit: 'take out', ...of });
  grace.edit(moveGreen(9));
  meet();
  expect(ada.read().routings[0]?.spare).toContain('h1');
  expect(green(ada)).toEqual({ x: 9, y: 1 });
});
