import type { Sketch } from '@loopwright/model';
import { expect, test } from 'vitest';
import { smallPlan } from '../fixtures/small-plan.ts';
import { twoPages } from '../fixtures/two-pages.ts';
import { openPlan } from '../plan-document.ts';
import { createPlanState } from '../server/create-plan-state.ts';
import type { NamedEdit } from './named-edit.ts';

const open = () => openPlan(createPlanState(smallPlan()));
const several = (...edits: readonly NamedEdit[]): NamedEdit => ({ edit: 'several', does: 'did several things', edits });
const takeOut = (hole: string): NamedEdit => ({ edit: 'take out', routing: 'a', hole });

test('several edits are one step, each done on what the one before left', () => {
  const plan = open();
  const before = plan.read();
  const edit = several(takeOut('h1'), takeOut('h2'), { edit: 'swap places', routing: 'a', hole: 'h1', with: 'h3' });
  expect(plan.edit(edit)).toBe('done');
  expect(plan.read().routings[0]?.loops[0]?.holes).toEqual(['h1']);
  expect(plan.read().routings[0]?.spare).toEqual(['h4', 'h3', 'h2']);
  expect(plan.steps().undo).toEqual(edit);
  plan.undo();
  expect(plan.read()).toEqual(before);
  plan.redo();
  expect(plan.read().routings[0]?.spare).toEqual(['h4', 'h3', 'h2']);
});

test('a thing added and changed in one step, and a step that comes to nothing', () => {
  const plan = open();
  const [pond] = smallPlan().site.features;
  if (!pond) throw new Error('the small plan has a pond');
  const mere = { ...pond, id: 'mere' };
  plan.edit(
    several({ edit: 'add features', features: [mere] }, { edit: 'change feature', feature: 'mere', to: { buffer: 9 } }),
  );
  expect(plan.read().site.features[1]).toMatchObject({ id: 'mere', buffer: 9 });
  const [there, back] = [takeOut('h4'), several()];
  expect(plan.edit(several(there))).toBe('nothing');
  expect(plan.edit(back)).toBe('nothing');
  expect(
    plan.edit(several({ edit: 'name site', name: 'Other' }, { edit: 'name site', name: plan.read().site.name })),
  ).toBe('nothing');
});

test('what was removed meanwhile is left out of the step; all of it removed is gone', () => {
  const { ada, grace, meet } = twoPages(smallPlan());
  grace.edit({ edit: 'remove hole', routing: 'a', hole: 'h2' });
  meet();
  expect(ada.edit(several(takeOut('h1'), takeOut('h2'), takeOut('h3')))).toBe('done');
  expect(ada.read().routings[0]?.spare).toEqual(['h4', 'h1', 'h3']);
  expect(ada.edit(several(takeOut('h2'), takeOut('h9')))).toBe('gone');
});

test('several within several, a whole plan, and more than five hundred are refused', () => {
  const plan = open();
  const before = plan.read();
  expect(plan.edit(several(takeOut('h1'), several(takeOut('h2'))))).toBe('nothing');
  expect(plan.edit(several(takeOut('h1'), { edit: 'lay out plan', plan: smallPlan() }))).toBe('nothing');
  expect(plan.edit(several(...Array.from({ length: 501 }, () => takeOut('h1'))))).toBe('nothing');
  expect(plan.read()).toBe(before);
});

test('shown live, several look as they will be, and nothing is written', () => {
  const plan = open();
  const state = plan.state();
  const edit = several(takeOut('h1'), { edit: 'name hole', routing: 'a', hole: 'h3', name: 'Oak' });
  expect(plan.readWith([edit]).routings[0]?.holes[2]?.name).toBe('Oak');
  expect(plan.readWith([edit])).toBe(plan.readWith([edit]));
  expect(plan.state()).toEqual(state);
});

const stroke = (id: string, more: Partial<Sketch> = {}): Sketch => ({
  ...{ id, by: 'Ann', ink: 1, kept: false },
  shape: { kind: 'stroke', points: Array.from({ length: 400 }, (_, x) => ({ x: x * 1.125, y: x % 7 })) },
  ...more,
});

test('a wiped sketch is gone for all, and whoever wiped it can bring it back whole', () => {
  const { ada, grace, meet } = twoPages(smallPlan());
  ada.edit({ edit: 'add sketch', sketch: stroke('k1') });
  ada.edit({ edit: 'add sketch', sketch: stroke('k2', { kept: true, note: 'the old hedge' }) });
  meet();
  expect(grace.read().site.sketches).toEqual([stroke('k1'), stroke('k2', { kept: true, note: 'the old hedge' })]);
  expect(grace.edit({ edit: 'wipe sketches', sketches: ['k1', 'k9'] })).toBe('done');
  meet();
  expect(ada.read().site.sketches?.map(({ id }) => id)).toEqual(['k2']);
  expect(ada.edit({ edit: 'change sketch', sketch: 'k1', to: { kept: true } })).toBe('gone');
  grace.undo();
  meet();
  expect(ada.read().site.sketches?.[0]).toEqual(stroke('k1'));
  expect(ada.edit({ edit: 'change sketch', sketch: 'k2', to: { kept: false, note: null } })).toBe('done');
  expect(ada.read().site.sketches?.[1]).toEqual(stroke('k2'));
});

test('a day of pencil strokes, wiped, weighs little', () => {
  const plan = open();
  const before = plan.state().length;
  const ids = Array.from({ length: 100 }, (_, index) => `k${index}`);
  for (const id of ids) plan.edit({ edit: 'add sketch', sketch: stroke(id) });
  const drawn = plan.state().length - before;
  plan.edit({ edit: 'wipe sketches', sketches: ids });
  expect(drawn).toBeGreaterThan(500_000);
  expect(plan.state().length - before).toBeLessThan(25_000);
  expect(plan.read().site).not.toHaveProperty('sketches');
});

test('a board takes a thousand sketches', () => {
  const plan = open();
  const small = (index: number) =>
    stroke(`k${index}`, {
      shape: {
        kind: 'rod',
        points: [
          { x: 0, y: 0 },
          { x: 1, y: index },
        ],
      },
    });
  plan.edit(
    several(...Array.from({ length: 500 }, (_, index): NamedEdit => ({ edit: 'add sketch', sketch: small(index) }))),
  );
  plan.edit(
    several(
      ...Array.from({ length: 500 }, (_, index): NamedEdit => ({ edit: 'add sketch', sketch: small(500 + index) })),
    ),
  );
  expect(plan.read().site.sketches).toHaveLength(1000);
  expect(plan.edit({ edit: 'add sketch', sketch: small(1000) })).toBe('nothing');
});
