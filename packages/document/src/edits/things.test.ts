import type { Base, Feature, ImageLayer, SiteMark, TeeSet } from '@loopwright/model';
import { expect, test } from 'vitest';
import { smallPlan } from '../fixtures/small-plan.ts';
import { twoPages } from '../fixtures/two-pages.ts';
import { openPlan } from '../plan-document.ts';
import { createPlanState } from '../server/create-plan-state.ts';
import type { NamedEdit } from './named-edit.ts';

const open = () => openPlan(createPlanState(smallPlan()));
const TRIANGLE = [
  { x: 0, y: 0 },
  { x: 9, y: 0 },
  { x: 9, y: 9 },
];
const base: Base = { id: 'b2', name: 'Halfway house', apron: { x: 5, y: 5 }, footprints: [TRIANGLE] };
const mark: SiteMark = { id: 'm1', kind: 'green site', at: { x: 1, y: 2 }, verdict: 'natural' };
const image = (id: string): ImageLayer => ({
  ...{ id, blob: 'a'.repeat(64), widthPixels: 100, heightPixels: 50 },
  ...{ placement: [2, 0, 10, 0, -2, 20], opacity: 1, name: `${id}.png`, scaledBy: 'two points' },
});
const feature = (id: string, more: Partial<Feature> = {}): Feature => ({
  ...{ id, kind: 'trees', geometry: { type: 'area', rings: [TRIANGLE] }, buffer: 0 },
  allows: { carry: false, walk: true, mow: false, build: false },
  ...more,
});

test('what is added is there as it was given, last among its like, and undo takes all of it away', () => {
  const plan = open();
  const before = plan.read();
  const edits: readonly NamedEdit[] = [
    { edit: 'add base', base },
    { edit: 'add mark', mark },
    { edit: 'add features', features: [feature('f1'), feature('f2', { name: 'Wood', height: 18 })] },
    { edit: 'add image', image: image('i1') },
    { edit: 'add image', image: image('i2') },
  ];
  for (const edit of edits) expect(plan.edit(edit)).toBe('done');
  const { site } = plan.read();
  expect(site.bases.at(-1)).toEqual(base);
  expect(site.marks).toEqual([mark]);
  expect(site.features.map(({ id }) => id)).toEqual(['pond', 'f1', 'f2']);
  expect(site.images).toEqual([image('i1'), image('i2')]);
  for (const edit of edits) expect(plan.edit(edit)).toBe('nothing'); // the ids are taken
  for (const _ of edits) plan.undo();
  expect(plan.read()).toEqual(before);
  for (const _ of edits) expect(plan.redo().kind).toBe('redone');
  expect(plan.read().site).toEqual(site);
});

test('of a thing, only the fields named change; null takes one away that it can do without', () => {
  const plan = open();
  plan.edit({ edit: 'change feature', feature: 'pond', to: { name: 'Mill pond', buffer: 12, authority: 'the mill' } });
  expect(plan.read().site.features[0]).toMatchObject({ name: 'Mill pond', buffer: 12, authority: 'the mill' });
  expect(plan.edit({ edit: 'change feature', feature: 'pond', to: { name: null, buffer: null } })).toBe('done');
  expect(plan.read().site.features[0]).toEqual({ ...smallPlan().site.features[0], buffer: 0, authority: 'the mill' });
  expect(plan.edit({ edit: 'change feature', feature: 'pond', to: { geometry: null } })).toBe('nothing');
  expect(plan.edit({ edit: 'change base', base: 'house', to: { apron: { x: Number.NaN, y: 0 } } })).toBe('nothing');
  expect(plan.edit({ edit: 'change feature', feature: 'no-such', to: { buffer: 3 } })).toBe('gone');
});

test('two people change different things about one feature at once, and both changes stand', () => {
  const { ada, grace, meet } = twoPages(smallPlan());
  ada.edit({ edit: 'change feature', feature: 'pond', to: { buffer: 30 } });
  grace.edit({ edit: 'change feature', feature: 'pond', to: { name: 'Mill pond', kind: 'wetland' } });
  meet();
  expect(ada.read().site.features[0]).toMatchObject({ buffer: 30, name: 'Mill pond', kind: 'wetland' });
  expect(grace.read()).toEqual(ada.read());
});

test('undo of adding what somebody changed since takes it away on both pages; redo brings it back with the change', () => {
  const { ada, grace, meet } = twoPages(smallPlan());
  ada.edit({ edit: 'add features', features: [feature('f1')] });
  meet();
  grace.edit({ edit: 'change feature', feature: 'f1', to: { buffer: 9 } });
  meet();
  expect(ada.undo()).toMatchObject({ kind: 'undone', overtaken: 1 });
  meet();
  for (const plan of [ada, grace]) {
    expect(plan.read().site.features.map(({ id }) => id)).toEqual(['pond']);
    expect(plan.unread()).toEqual([]);
  }
  expect(grace.edit({ edit: 'change feature', feature: 'f1', to: { buffer: 7 } })).toBe('gone');
  ada.redo();
  meet();
  expect(grace.read().site.features[1]).toEqual(feature('f1', { buffer: 9 }));
});

test('a tee set whose adding was undone is not there, whatever somebody called it since', () => {
  const { ada, grace, meet } = twoPages(smallPlan());
  ada.edit({ edit: 'add tee set', teeSet: { id: 't3', name: 'Tips', player: 'scratch man' }, after: 'first' });
  meet();
  grace.edit({ edit: 'change tee set', teeSet: 't3', to: { name: 'Gold' } });
  meet();
  ada.undo();
  expect(ada.read().teeSets.map(({ id }) => id)).toEqual(['back', 'forward']);
});

test('undo of adding what somebody has removed changes nothing that is seen; undo of the removal finds it undone', () => {
  const { ada, grace, meet } = twoPages(smallPlan());
  ada.edit({ edit: 'add base', base });
  meet();
  grace.edit({ edit: 'remove base', base: 'b2' });
  meet();
  const seen = ada.read();
  expect(ada.undo()).toMatchObject({ kind: 'undone', overtaken: 1 });
  expect(ada.read()).toEqual(seen);
  meet();
  grace.undo();
  expect(grace.read().site.bases.map(({ id }) => id)).toEqual(['house']);
});

test('a footprint of too many points is refused rather than dropped', () => {
  const plan = open();
  const large = Array.from({ length: 501 }, (_, x) => ({ x, y: x % 2 }));
  expect(plan.edit({ edit: 'change base', base: 'house', to: { footprints: [TRIANGLE, large] } })).toBe('nothing');
  expect(plan.edit({ edit: 'add base', base: { ...base, footprints: [large] } })).toBe('nothing');
});

test('there are limits to how many, and to the points of an import; all of it comes in or none', () => {
  const plan = open();
  const many = (count: number) => Array.from({ length: count }, (_, index) => feature(`f${index}`));
  expect(plan.edit({ edit: 'add features', features: many(2000) })).toBe('nothing');
  expect(plan.edit({ edit: 'add features', features: many(1999) })).toBe('done');
  expect(plan.read().site.features).toHaveLength(2000);
  expect(plan.edit({ edit: 'add features', features: [feature('more')] })).toBe('nothing');
  const ring = Array.from({ length: 500 }, (_, x) => ({ x, y: x % 2 }));
  const large = many(101).map((one) => ({ ...one, geometry: { type: 'area' as const, rings: [ring] } }));
  expect(open().edit({ edit: 'add features', features: large })).toBe('nothing');
  expect(open().edit({ edit: 'add features', features: [feature('f1'), feature('f1')] })).toBe('nothing');
  expect(open().edit({ edit: 'add features', features: [] })).toBe('nothing');
});

test('of features to be removed, those still there go; none there is gone', () => {
  const { ada, grace, meet } = twoPages(smallPlan());
  ada.edit({ edit: 'add features', features: [feature('f1'), feature('f2')] });
  meet();
  grace.edit({ edit: 'remove features', features: ['f1'] });
  meet();
  expect(ada.edit({ edit: 'remove features', features: ['f1', 'f2'] })).toBe('done');
  expect(ada.read().site.features.map(({ id }) => id)).toEqual(['pond']);
  expect(ada.edit({ edit: 'remove features', features: ['f1', 'f2'] })).toBe('gone');
  ada.undo();
  expect(ada.read().site.features.map(({ id }) => id)).toEqual(['pond', 'f2']);
});

test('images are put in order, the first lies lowest', () => {
  const plan = open();
  for (const id of ['i1', 'i2', 'i3']) plan.edit({ edit: 'add image', image: image(id) });
  const order = () => plan.read().site.images.map(({ id }) => id);
  expect(plan.edit({ edit: 'order image', image: 'i3', after: 'first' })).toBe('done');
  expect(order()).toEqual(['i3', 'i1', 'i2']);
  expect(plan.edit({ edit: 'order image', image: 'i3', after: 'first' })).toBe('nothing');
  expect(plan.edit({ edit: 'order image', image: 'i3', after: 'i1' })).toBe('done');
  expect(order()).toEqual(['i1', 'i3', 'i2']);
  expect(plan.edit({ edit: 'order image', image: 'i3', after: 'i9' })).toBe('gone');
});

test('a replaced image lies where the old one lay, however many pixels it has', () => {
  const plan = open();
  plan.edit({ edit: 'add image', image: image('i1') });
  const finer = { image: 'i1', blob: 'b'.repeat(64), widthPixels: 400, heightPixels: 100 };
  expect(plan.edit({ edit: 'replace image', ...finer })).toBe('done');
  const [now] = plan.read().site.images;
  // 100 × 50 pixels at 2 m reached 200 m east and 100 m down: so do 400 at 0.5 m and 100 at 1 m.
  expect(now?.placement).toEqual([0.5, 0, 10, 0, -1, 20]);
  expect(now).toMatchObject({ blob: 'b'.repeat(64), name: 'i1.png', scaledBy: 'two points' });
  expect(plan.edit({ edit: 'replace image', ...finer, widthPixels: 0 })).toBe('nothing');
  expect(plan.edit({ edit: 'replace image', ...finer, blob: '../etc' })).toBe('nothing');
});

test('at most six tee sets are added on the board, and the last one stays', () => {
  const plan = open();
  const teeSet = (id: string): TeeSet => ({ id, name: id, player: 'bogey man' });
  for (const id of ['t3', 't4', 't5', 't6'])
    expect(plan.edit({ edit: 'add tee set', teeSet: teeSet(id), after: 'back' })).toBe('done');
  expect(plan.edit({ edit: 'add tee set', teeSet: teeSet('t7'), after: 'first' })).toBe('nothing');
  expect(plan.read().teeSets.map(({ id }) => id)).toEqual(['back', 't6', 't5', 't4', 't3', 'forward']);
  plan.edit({ edit: 'order tee set', teeSet: 'back', after: 'forward' });
  expect(plan.edit({ edit: 'change tee set', teeSet: 'back', to: { name: 'Tips', player: null } })).toBe('done');
  expect(plan.read().teeSets.at(-1)).toEqual({ id: 'back', name: 'Tips', player: 'scratch man' });
  for (const id of ['t3', 't4', 't5', 't6', 'forward'])
    expect(plan.edit({ edit: 'remove tee set', teeSet: id })).toBe('done');
  expect(plan.edit({ edit: 'remove tee set', teeSet: 'back' })).toBe('nothing');
  expect(plan.edit({ edit: 'remove tee set', teeSet: 'forward' })).toBe('gone');
});
