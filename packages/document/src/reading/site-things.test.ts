import type { Plan, Sketch } from '@loopwright/model';
import { expect, test } from 'vitest';
import * as Y from 'yjs';
import { smallPlan } from '../fixtures/small-plan.ts';
import { openPlan } from '../plan-document.ts';
import type { Root } from '../roots.ts';
import { createPlanState } from '../server/create-plan-state.ts';

const STROKE: Sketch = {
  id: 'k1',
  shape: {
    kind: 'stroke',
    points: [
      { x: 0, y: 0 },
      { x: 5, y: 5 },
    ],
  },
  by: 'Ann',
  ink: 2,
  kept: true,
  note: 'here',
};

const drawnOn = (): Plan => {
  const plan = smallPlan();
  const image = {
    id: 'i1',
    blob: 'a'.repeat(64),
    ...{ widthPixels: 10, heightPixels: 10, placement: [1, 0, 0, 0, -1, 0] as const, opacity: 1 },
    ...{ name: 'aerial.png', scaledBy: 'guess' as const },
  };
  return { ...plan, site: { ...plan.site, units: 'yards', sketches: [STROKE], images: [image] } };
};

/** The plan as it reads after some peer has written a value straight into the shared document. */
const after = (root: Root, key: string, value: unknown) => {
  const doc = new Y.Doc();
  Y.applyUpdate(doc, createPlanState(drawnOn()));
  doc.getMap(root).set(key, value);
  const plan = openPlan(Y.encodeStateAsUpdate(doc));
  return { site: plan.read().site, unread: plan.unread() };
};

test.each<readonly [Root, string, unknown]>([
  ['sketches', 'k1/shape', { kind: 'stroke', points: 'many' }],
  ['sketches', 'k1/drawn', 'Ann'],
  ['sketches', 'k1/kept', 'yes'],
  ['sketches', 'k1/note', 7],
  ['sketches', 'k1/seat', 'here'],
  ['images', 'i1/name', 7],
  ['images', 'i1/scaled-by', 'eye'],
  ['bases', 'house/note', 7],
  ['site', 'units', 'ells'],
  ['site', 'grid', [1, 2]],
])('in %s, rubbish at %s is skipped and reported, and nothing else is lost', (root, key, value) => {
  const { site, unread } = after(root, key, value);
  expect(unread).toEqual([{ root, key }]);
  expect(site.features).toEqual(smallPlan().site.features);
  expect(site.bases.map(({ id }) => id)).toEqual(['house']);
  expect(site.images.map(({ id }) => id)).toEqual(['i1']);
  expect(site.sketches?.length ?? 0).toBe(key === 'k1/shape' ? 0 : 1);
});

test('a sketch that does not say who drew it is still shown', () => {
  expect(after('sketches', 'k1/drawn', null).site.sketches?.[0]).toMatchObject({ by: 'somebody', ink: 0 });
});

test('a board without sketches says nothing of them, also when all were wiped', () => {
  expect(openPlan(createPlanState(smallPlan())).read().site).not.toHaveProperty('sketches');
  expect(after('sketches', 'k1/seat', { in: 'removed', key: 'a0' }).site).not.toHaveProperty('sketches');
});

test('a thousand and more sketches of strangers are read as far as a board goes', () => {
  const doc = new Y.Doc();
  Y.applyUpdate(doc, createPlanState(drawnOn()));
  doc.transact(() => {
    for (let i = 0; i < 1500; i++) {
      doc.getMap('sketches').set(`x${i}/seat`, { in: 'plan', key: 'a5' });
      doc.getMap('sketches').set(`x${i}/shape`, STROKE.shape);
    }
  });
  expect(openPlan(Y.encodeStateAsUpdate(doc)).read().site.sketches).toHaveLength(1000);
});
