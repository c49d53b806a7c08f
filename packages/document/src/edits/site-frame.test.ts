import type { Boundary, SitePoint } from '@loopwright/model';
import { expect, test } from 'vitest';
import { smallPlan } from '../fixtures/small-plan.ts';
import { openPlan } from '../plan-document.ts';
import { createPlanState } from '../server/create-plan-state.ts';
import type { NamedEdit } from './named-edit.ts';

const open = () => openPlan(createPlanState(smallPlan()));
const SQUARE: readonly SitePoint[] = [
  { x: 0, y: 0 },
  { x: 900, y: 0 },
  { x: 900, y: 900 },
  { x: 0, y: 900 },
];
const BOUNDARY: Boundary = { outlines: [SQUARE], inner: [], tolerance: 0 };

test('name, note, units, north and grid of a site are set, and taken back one by one', () => {
  const plan = open();
  const before = plan.read();
  const edits: readonly NamedEdit[] = [
    { edit: 'name site', name: ' Made-up Moor ' },
    { edit: 'note site', note: 'heath\nand pines' },
    { edit: 'set units', units: 'yards' },
    { edit: 'set north', north: 0.25 },
    { edit: 'set grid', grid: { easting: 412_000, northing: 98_000 } },
    { edit: 'draw boundary', boundary: BOUNDARY },
  ];
  for (const edit of edits) expect(plan.edit(edit)).toBe('done');
  expect(plan.read().site).toMatchObject({
    ...{ name: 'Made-up Moor', note: 'heath\nand pines', units: 'yards', north: 0.25, boundary: BOUNDARY },
    grid: { easting: 412_000, northing: 98_000 },
  });
  for (const edit of edits) expect(plan.edit(edit)).toBe('nothing');
  for (const _ of edits) plan.undo();
  expect(plan.read()).toEqual(before);
});

test('an empty name or note, and no boundary, take it away', () => {
  const plan = open();
  plan.edit({ edit: 'draw boundary', boundary: BOUNDARY });
  expect(plan.edit({ edit: 'draw boundary', boundary: null })).toBe('done');
  expect(plan.read().site.boundary).toBeUndefined();
  expect(plan.edit({ edit: 'draw boundary', boundary: null })).toBe('nothing');
  expect(plan.edit({ edit: 'name site', name: '' })).toBe('done');
  expect(plan.read().site.name).toBe('Unnamed site');
  expect(plan.edit({ edit: 'note site', note: ' \n ' })).toBe('nothing');
});

test.each<NamedEdit>([
  { edit: 'set north', north: Number.NaN },
  { edit: 'set north', north: 44 },
  { edit: 'set grid', grid: { easting: Number.POSITIVE_INFINITY, northing: 0 } },
  { edit: 'draw boundary', boundary: { outlines: [], inner: [], tolerance: 0 } },
  { edit: 'draw boundary', boundary: { outlines: [SQUARE.slice(0, 2)], inner: [], tolerance: 0 } },
  {
    edit: 'draw boundary',
    boundary: { outlines: [Array.from({ length: 501 }, (_, x) => ({ x, y: x % 2 }))], inner: [], tolerance: 0 },
  },
])('$edit changes nothing when it cannot be read: %j', (edit) => {
  const plan = open();
  const before = plan.read();
  expect(plan.edit(edit)).toBe('nothing');
  expect(plan.read()).toBe(before);
});

test('a name of ten thousand characters, in any script, is cut between two characters', () => {
  for (const letter of ['x', 'é', 'ह', '球', 'ע', '⛳', '😀', '𝔊']) {
    const plan = open();
    plan.edit({ edit: 'name site', name: letter.repeat(10_000) });
    plan.edit({ edit: 'change base', base: 'house', to: { name: letter.repeat(10_000) } });
    plan.edit({ edit: 'change feature', feature: 'pond', to: { name: `x${letter.repeat(9999)}` } });
    const { name, bases, features } = plan.read().site;
    expect([name, bases[0]?.name]).toEqual([letter.repeat(80), letter.repeat(80)]);
    expect(features[0]?.name).toBe(`x${letter.repeat(79)}`);
  }
});
