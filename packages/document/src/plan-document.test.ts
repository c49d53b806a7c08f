import { type Hole, holeOf, type Plan, SETTINGS } from '@loopwright/model';
import { expect, test } from 'vitest';
import type { PlanDocument } from './contract.ts';
import type { NamedEdit } from './edits/named-edit.ts';
import { smallPlan } from './fixtures/small-plan.ts';
import { openPlan } from './plan-document.ts';
import { createPlanState } from './server/create-plan-state.ts';

const opened = (): PlanDocument => openPlan(createPlanState(smallPlan()));
const hole = (plan: Plan, id: string): Hole => {
  const found = plan.routings[0] && holeOf(plan.routings[0], id);
  if (!found) throw new Error(`no hole ${id}`);
  return found;
};
const order = (plan: Plan) => plan.routings[0]?.loops[0]?.holes;
const of = (id: string) => ({ routing: 'a', hole: id });
const moveGreen = (id: string, x: number): NamedEdit => ({
  edit: 'move part',
  ...of(id),
  part: 'green',
  to: { x, y: 500 },
});

test('a plan laid out reads back as it was', () => {
  expect(opened().read()).toEqual(smallPlan());
  expect(opened().unread()).toEqual([]);
});

test('the largest area a plan may hold reads back whole', () => {
  const ring = (at: number) => Array.from({ length: 500 }, (_, i) => ({ x: at + i / 8, y: at + (i % 7) + i / 4 }));
  const rings = Array.from({ length: 50 }, (_, index) => ring(index * 100));
  const plan = smallPlan();
  const features = plan.site.features.map((feature) => ({ ...feature, geometry: { type: 'area' as const, rings } }));
  const read = openPlan(createPlanState({ ...plan, site: { ...plan.site, features } }));
  expect(read.unread()).toEqual([]);
  expect(read.read().site.features).toEqual(features);
});

test('of several drags at once, one that goes on leaves the holes of the others the same objects', () => {
  const plan = opened();
  const [still, mine] = [moveGreen('h2', 40), moveGreen('h3', 50)];
  const before = plan.readWith([moveGreen('h1', 10), still, mine]);
  const after = plan.readWith([moveGreen('h1', 20), still, mine]);
  expect(hole(after, 'h1')).not.toBe(hole(before, 'h1'));
  expect(hole(after, 'h2')).toBe(hole(before, 'h2'));
  expect(hole(after, 'h3')).toBe(hole(before, 'h3'));
  const other = plan.readWith([moveGreen('h1', 20), moveGreen('h2', 60)]);
  expect(hole(other, 'h2').green?.centre.x).toBe(60);
});

test('an empty document reads as bare land without routings', () => {
  expect(openPlan().read()).toMatchObject({ loopwright: 1, routings: [], teeSets: [], site: { features: [] } });
});

test('a plan is never laid out over holes', () => {
  expect(opened().edit({ edit: 'lay out plan', plan: smallPlan() })).toBe('nothing');
});

test('reading twice gives the same plan, frozen all the way down', () => {
  const plan = opened();
  const read = plan.read();
  expect(plan.read()).toBe(read);
  expect(Object.isFrozen(read) && Object.isFrozen(hole(read, 'h1').green)).toBe(true);
});

test('a moved green makes one new hole; everything else keeps its identity', () => {
  const plan = opened();
  const before = plan.read();
  expect(plan.edit(moveGreen('h1', 130))).toBe('done');
  const after = plan.read();
  expect(hole(after, 'h1').green?.centre).toEqual({ x: 130, y: 500 });
  expect(hole(after, 'h1')).not.toBe(hole(before, 'h1'));
  for (const id of ['h2', 'h3', 'h4']) expect(hole(after, id)).toBe(hole(before, id));
  expect(after.site).toBe(before.site);
  expect(after.routings[0]?.loops).toBe(before.routings[0]?.loops);
});

test('a moved green keeps its size and lie', () => {
  const plan = opened();
  plan.edit(moveGreen('h1', 130));
  expect(hole(plan.read(), 'h1').green).toEqual({ centre: { x: 130, y: 500 }, length: 30, width: 24, bearing: 0.5 });
});

test('a live drag shows as it would be and stores nothing', () => {
  const plan = opened();
  const state = plan.state();
  const drag = moveGreen('h2', 450);
  const live = plan.readWith([drag]);
  expect(hole(live, 'h2').green?.centre.x).toBe(450);
  expect(hole(live, 'h1')).toBe(hole(plan.read(), 'h1'));
  expect(plan.readWith([drag])).toBe(live);
  expect(plan.state()).toEqual(state);
  expect(hole(plan.read(), 'h2').green?.centre.x).toBe(420);
});

test('a drag at rest on what is stored is the stored plan itself', () => {
  const plan = opened();
  expect(plan.readWith([])).toBe(plan.read());
  expect(plan.readWith([{ edit: 'move hole', ...of('h1'), by: { x: 0, y: 0 } }])).toBe(plan.read());
});

test('live drags of a hole that is gone are left out', () => {
  const plan = opened();
  expect(plan.readWith([moveGreen('nobody', 1)])).toBe(plan.read());
});

test('an edit of a hole that is not there is gone, one that changes nothing is nothing', () => {
  const plan = opened();
  expect(plan.edit(moveGreen('nobody', 1))).toBe('gone');
  expect(plan.edit({ edit: 'move hole', ...of('h1'), by: { x: 0, y: 0 } })).toBe('nothing');
  expect(plan.edit({ edit: 'set par', ...of('h1'), sex: 'men', par: 'by length' })).toBe('nothing');
  expect(plan.steps()).toEqual({});
});

test('listeners hear of each change once, until they stop', () => {
  const plan = opened();
  let heard = 0;
  const stop = plan.onChange(() => {
    heard += 1;
  });
  plan.edit({ edit: 'move hole', ...of('h1'), by: { x: 5, y: 5 } });
  plan.edit(moveGreen('nobody', 1));
  stop();
  plan.edit(moveGreen('h1', 9));
  expect(heard).toBe(1);
});

test('moving a hole in the round renumbers by its seat alone', () => {
  const plan = opened();
  expect(plan.edit({ edit: 'move in the round', ...of('h3'), loop: 'out', after: 'first' })).toBe('done');
  expect(order(plan.read())).toEqual(['h3', 'h1', 'h2']);
  expect(plan.edit({ edit: 'move in the round', ...of('h3'), loop: 'out', after: 'h1' })).toBe('done');
  expect(order(plan.read())).toEqual(['h1', 'h3', 'h2']);
  expect(plan.edit({ edit: 'move in the round', ...of('h3'), loop: 'out', after: 'h1' })).toBe('nothing');
  expect(plan.edit({ edit: 'move in the round', ...of('h3'), loop: 'nowhere', after: 'first' })).toBe('gone');
});

test('a hole taken out lies last in the tray, and can be brought back', () => {
  const plan = opened();
  expect(plan.edit({ edit: 'take out', ...of('h2') })).toBe('done');
  expect(order(plan.read())).toEqual(['h1', 'h3']);
  expect(plan.read().routings[0]?.spare).toEqual(['h4', 'h2']);
  expect(plan.edit({ edit: 'bring back', ...of('h4'), loop: 'out', after: 'h1' })).toBe('done');
  expect(order(plan.read())).toEqual(['h1', 'h4', 'h3']);
});

test('two holes swap places, also in and out of the tray', () => {
  const plan = opened();
  plan.edit({ edit: 'swap places', ...of('h1'), with: 'h3' });
  expect(order(plan.read())).toEqual(['h3', 'h2', 'h1']);
  plan.edit({ edit: 'swap places', ...of('h2'), with: 'h4' });
  expect(order(plan.read())).toEqual(['h3', 'h4', 'h1']);
  expect(plan.read().routings[0]?.spare).toEqual(['h2']);
});

const setting = 'bend-angle';

test('par, verdict, pins, relations, names, settings and decisions read back', () => {
  const plan = opened();
  plan.edit({ edit: 'set par', ...of('h1'), sex: 'women', par: 5 });
  plan.edit({ edit: 'judge', ...of('h1'), verdict: 'keeper', reason: 'the best green site' });
  plan.edit({ edit: 'pin', ...of('h1'), part: 'green' });
  plan.edit({ edit: 'relate', ...of('h1'), relation: { kind: 'shares its green with', hole: 'h3' } });
  plan.edit({ edit: 'name hole', ...of('h1'), name: 'Quarry' });
  plan.edit({ edit: 'change setting', setting, value: SETTINGS[setting].most });
  const disposition = {
    routing: 'a',
    finding: 'long-walk|h1|h2',
    kind: 'to be checked by',
    words: 'us',
    measured: 310,
  };
  plan.edit({ edit: 'decide', disposition: { ...disposition, kind: 'to be checked by' } });
  expect(hole(plan.read(), 'h1')).toMatchObject({
    par: { men: 'by length', women: 5 },
    verdict: 'keeper',
    verdictReason: 'the best green site',
    pinned: ['green'],
    relations: [{ kind: 'shares its green with', hole: 'h3' }],
    name: 'Quarry',
  });
  expect(plan.read().settings).toEqual({ [setting]: SETTINGS[setting].most });
  expect(plan.read().dispositions).toEqual([disposition]);

  plan.edit({ edit: 'unpin', ...of('h1'), part: 'green' });
  plan.edit({ edit: 'unrelate', ...of('h1'), relation: { kind: 'shares its green with', hole: 'h3' } });
  plan.edit({ edit: 'name hole', ...of('h1'), name: '' });
  plan.edit({ edit: 'change setting', setting, value: 'default' });
  plan.edit({ edit: 'reopen', routing: 'a', finding: 'long-walk|h1|h2' });
  expect(hole(plan.read(), 'h1')).toMatchObject({ pinned: [], relations: [] });
  expect(hole(plan.read(), 'h1').name).toBeUndefined();
  expect(plan.read().settings).toEqual({});
  expect(plan.read().dispositions).toEqual([]);
});
