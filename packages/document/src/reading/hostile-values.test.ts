import { canonicalJson, seededRandom } from '@loopwright/model';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import * as Y from 'yjs';
import { smallPlan } from '../fixtures/small-plan.ts';
import { openPlan } from '../plan-document.ts';
import { ROOTS } from '../roots.ts';
import { createPlanState } from '../server/create-plan-state.ts';

/** The plan as a page reads it after some peer has written straight into the shared document, past every check. */
const after = (write: (doc: Y.Doc) => void) => {
  const doc = new Y.Doc();
  Y.applyUpdate(doc, createPlanState(smallPlan()));
  write(doc);
  const plan = openPlan(Y.encodeStateAsUpdate(doc));
  return { plan, read: plan.read(), unread: plan.unread() };
};
const hole = (doc: Y.Doc, part: string, value: unknown) => doc.getMap('holes').set(`a/h1/${part}`, value);

test.each([
  ['green', { x: Number.NaN, y: 0 }],
  ['green', { x: 1e308, y: 0 }],
  ['green', 'here'],
  ['tee:back', [1, 2]],
  ['turn:t1', { x: 1, y: 2 }],
  ['turn:t1', { x: 1, y: 2, order: '!' }],
  ['par-men', 17],
  ['seat', { in: 'moon', key: 'a0' }],
  ['waypoints', Array.from({ length: 5000 }, () => ({ x: 0, y: 0 }))],
  ['green-shape', { length: -1, width: 1e9, bearing: 0 }],
  ['name', 'x'.repeat(2_000_000)],
])('a hole whose %s is rubbish is skipped there and reported, and the other holes are untouched', (part, value) => {
  const { read, unread } = after((doc) => hole(doc, part, value));
  expect(unread).toEqual([{ root: 'holes', key: `a/h1/${part}` }]);
  expect(read.routings[0]?.holes.map(({ id }) => id)).toEqual(['h1', 'h2', 'h3', 'h4']);
  expect(read.routings[0]?.holes.slice(1)).toEqual(smallPlan().routings[0]?.holes.slice(1));
});

test('a hole whose seat is rubbish or empty is shown as a spare one', () => {
  for (const seat of [7, null]) {
    const { read } = after((doc) => hole(doc, 'seat', seat));
    expect(read.routings[0]?.spare).toContain('h1');
  }
});

test('a hole in a loop that is not there is shown as a spare one', () => {
  const { read } = after((doc) => hole(doc, 'seat', { in: 'loop', loop: 'nowhere', key: 'a0' }));
  expect(read.routings[0]?.spare).toContain('h1');
});

test('a hole without a green is incomplete, not broken', () => {
  const { read } = after((doc) => hole(doc, 'green', null));
  expect(read.routings[0]?.holes[0]?.green).toBeUndefined();
  expect(read.routings[0]?.holes[0]?.tees.back).toEqual({ x: 0, y: 0 });
});

test.each([
  '__proto__',
  'a/__proto__/seat',
  'a/h1/__proto__',
  'a/h1/tee:constructor',
  'constructor',
  '',
  'a//seat',
  'a/h1',
])('the key %j is nobody’s: skipped and reported', (key) => {
  const { read, unread } = after((doc) => doc.getMap('holes').set(key, { in: 'spare', key: 'a0' }));
  expect(read).toEqual(smallPlan());
  expect(unread).toEqual([{ root: 'holes', key }]);
});

test('shared types, bytes and documents in place of values are skipped and reported', () => {
  for (const value of [new Y.Map(), new Y.Array(), new Y.Text('x'), new Y.Doc(), new Uint8Array(4), 3n]) {
    const { read, unread } = after((doc) => hole(doc, 'green', value));
    expect(read.routings[0]?.holes[0]?.green).toBeUndefined();
    expect(unread).toEqual([{ root: 'holes', key: 'a/h1/green' }]);
  }
});

test('a collection used as a list, or as text, does not break reading', () => {
  const { read } = after((doc) => {
    const other = new Y.Doc();
    other.getArray('holes').push([1, 2, 3]);
    other.getText('loops').insert(0, 'hello');
    Y.applyUpdate(doc, Y.encodeStateAsUpdate(other));
  });
  expect(read).toEqual(smallPlan());
});

test('ten thousand holes of a stranger are read as far as a routing goes', () => {
  const { read } = after((doc) => {
    doc.transact(() => {
      for (let i = 0; i < 10_000; i++) doc.getMap('holes').set(`a/x${i}/seat`, { in: 'loop', loop: 'out', key: 'a0' });
    });
  });
  expect(read.routings[0]?.holes.length).toBe(200);
});

test('any values under any keys: reading never throws, never writes, and is the same in one go as bit by bit', () => {
  const random = seededRandom(7);
  const parts = [
    'a/h1/seat',
    'a/h1/green',
    'a/h9/tee:back',
    'a/out/name',
    'out/name',
    'pond/geometry',
    'a/seat',
    'north',
  ];
  fc.assert(
    fc.property(fc.array(fc.tuple(fc.constantFrom(...ROOTS), fc.constantFrom(...parts), fc.jsonValue())), (writes) => {
      const doc = new Y.Doc();
      Y.applyUpdate(doc, createPlanState(smallPlan()));
      const live = openPlan(Y.encodeStateAsUpdate(doc));
      live.read();
      for (const [root, key, value] of writes) {
        const before = Y.encodeStateVector(doc);
        doc.getMap(root).set(key, value);
        applyTo(live, Y.encodeStateAsUpdate(doc, before));
        if (random() < 0.5) live.read();
      }
      const state = live.state();
      expect(canonicalJson(live.read())).toBe(canonicalJson(openPlan(Y.encodeStateAsUpdate(doc)).read()));
      expect(live.state()).toEqual(state);
    }),
    { numRuns: 80 },
  );
});

function applyTo(plan: ReturnType<typeof openPlan>, update: Uint8Array): void {
  if ('doc' in plan && plan.doc instanceof Y.Doc) Y.applyUpdate(plan.doc, update);
}
