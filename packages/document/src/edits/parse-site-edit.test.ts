import type { ImageLayer, Sketch } from '@loopwright/model';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { smallPlan } from '../fixtures/small-plan.ts';
import { openPlan } from '../plan-document.ts';
import { createPlanState } from '../server/create-plan-state.ts';
import { parseNamedEdit } from './parse-named-edit.ts';
import type { OutlineOf, SiteEdit } from './site-edit.ts';

const AT = { x: 1.234, y: -5 };
const RING = [AT, { x: 9, y: 0 }, { x: 9, y: 9 }];
const POND: OutlineOf = { of: 'feature', feature: 'pond', ring: 0 };
const base = { id: 'b1', name: 'House', apron: AT, footprints: [RING], note: 'old' };
const allows = { carry: true, walk: false, mow: false, build: false };
const feature = { id: 'f1', kind: 'water', geometry: { type: 'area', rings: [RING] }, allows, buffer: 5 } as const;
const mark = { id: 'm1', kind: 'green site', at: AT, verdict: 'natural', note: 'n' } as const;
const image: ImageLayer = {
  ...{ id: 'i1', blob: 'a'.repeat(64), widthPixels: 8, heightPixels: 8 },
  ...{ placement: [1, 0, 0, 0, -1, 0], opacity: 0.5 },
};
const sketch: Sketch = { id: 'k1', shape: { kind: 'rod', points: RING }, by: 'Ann', ink: 1, kept: false };

const EDITS: readonly SiteEdit[] = [
  { edit: 'name site', name: '' },
  { edit: 'note site', note: 'two\nlines' },
  { edit: 'set units', units: 'yards' },
  { edit: 'set north', north: -0.2 },
  { edit: 'set grid', grid: { easting: 1, northing: 2 } },
  { edit: 'draw boundary', boundary: { outlines: [RING], inner: [], tolerance: 2 } },
  { edit: 'draw boundary', boundary: null },
  { edit: 'add base', base },
  { edit: 'change base', base: 'b1', to: { apron: AT } },
  { edit: 'change base', base: 'b1', to: { name: '', footprints: [RING], note: null } },
  { edit: 'remove base', base: 'b1' },
  { edit: 'add features', features: [feature] },
  { edit: 'change feature', feature: 'f1', to: { kind: 'trees', geometry: feature.geometry, allows, buffer: 3 } },
  { edit: 'change feature', feature: 'f1', to: { name: 'Mere', authority: null, note: null, height: 12 } },
  { edit: 'remove features', features: ['f1', 'f2'] },
  { edit: 'add mark', mark },
  { edit: 'change mark', mark: 'm1', to: { kind: 'tee site', at: AT, verdict: 'needs work', note: null } },
  { edit: 'remove mark', mark: 'm1' },
  { edit: 'move vertex', outline: POND, from: AT, to: { x: 2, y: 2 } },
  { edit: 'add vertex', outline: { of: 'base', base: 'b1', ring: 1 }, after: AT, at: { x: 2, y: 2 } },
  { edit: 'remove vertex', outline: { of: 'boundary', part: 'inner', ring: 0 }, at: AT },
  { edit: 'move outline', outline: { of: 'sketch', sketch: 'k1' }, by: AT },
  { edit: 'add image', image },
  {
    edit: 'change image',
    image: 'i1',
    to: { placement: [2, 0, 1, 0, -2, 1], opacity: 0, name: 'x', scaledBy: 'guess' },
  },
  { edit: 'order image', image: 'i1', after: 'first' },
  { edit: 'remove image', image: 'i1' },
  { edit: 'add tee set', teeSet: { id: 't1', name: 'Tips', player: 'scratch man' }, after: 'first' },
  { edit: 'change tee set', teeSet: 't1', to: { name: 'Back', player: 'bogey woman' } },
  { edit: 'order tee set', teeSet: 't1', after: 't2' },
  { edit: 'remove tee set', teeSet: 't1' },
  { edit: 'add sketch', sketch },
  { edit: 'change sketch', sketch: 'k1', to: { shape: sketch.shape, by: 'Bo', ink: 2, kept: true, note: '' } },
  { edit: 'wipe sketches', sketches: ['k1'] },
];

test.each(EDITS)('$edit comes through as it was said', (edit) => {
  expect(parseNamedEdit(JSON.parse(JSON.stringify(edit)))).toEqual(edit);
});

test.each([
  { edit: 'move vertex', outline: POND, from: AT },
  { edit: 'move vertex', outline: { ...POND, ring: 0.5 }, from: AT, to: AT },
  { edit: 'move vertex', outline: { ...POND, feature: '__proto__' }, from: AT, to: AT },
  { edit: 'move outline', outline: { of: 'hole', hole: 'h1' }, by: AT },
  { edit: 'move outline', outline: POND, by: { x: Number.NaN, y: 0 } },
  { edit: 'change feature', feature: 'f1', to: { geometry: { type: 'area', rings: [[AT]] } } },
  { edit: 'change feature', feature: 'f1', to: 7 },
  { edit: 'change image', image: 'i1', to: { placement: [0, 0, 0, 0, 0, 0] } },
  { edit: 'change sketch', sketch: 'k1', to: { ink: 99 } },
  { edit: 'add features', features: [feature, 7] },
  { edit: 'add sketch', sketch: { ...sketch, shape: { kind: 'stroke', points: [] } } },
  { edit: 'add mark', mark: { ...mark, kind: 'pin' } },
  { edit: 'replace image', image: 'i1', blob: 'b'.repeat(64), widthPixels: 8, heightPixels: 8 },
  { edit: 'set north', north: '1' },
  { edit: 'wipe sketches', sketches: [7] },
])('%j is no edit that is taken from others', (value) => {
  expect(parseNamedEdit(value)).toBeUndefined();
});

test('any values in an edit of the site: it is one or none, and laid over a plan it does no harm', () => {
  const plan = openPlan(createPlanState(smallPlan()));
  const before = plan.read();
  const rubbish = fc.oneof(fc.jsonValue(), fc.constantFrom(AT, POND, feature, mark, image, sketch, base, { at: AT }));
  fc.assert(
    fc.property(
      fc.constantFrom(...EDITS),
      fc.dictionary(fc.constantFrom(...Object.keys(Object.assign({}, ...EDITS))), rubbish),
      (edit, more) => {
        const read = parseNamedEdit({ ...edit, ...more, edit: edit.edit });
        if (read) expect(plan.readWith([read]).routings).toEqual(before.routings);
      },
    ),
    { numRuns: 400 },
  );
  expect(plan.read()).toBe(before);
});
