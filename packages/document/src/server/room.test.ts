import { LIMITS } from '@loopwright/protocol';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import * as Y from 'yjs';
import { smallPlan } from '../fixtures/small-plan.ts';
import { openPlan } from '../plan-document.ts';
import type { RoomRules } from './contract.ts';
import { createPlanState } from './create-plan-state.ts';
import { openRoom } from './room.ts';

const RULES: RoomRules = {
  room: 'plan',
  mostUpdateBytes: LIMITS.mostUpdateBytes,
  mostStateBytes: LIMITS.mostStateBytes,
};
const state = createPlanState(smallPlan());
const openedRoom = (rules: Partial<RoomRules> = {}) => openRoom({ ...RULES, ...rules }, state);
/** A page's own copy of the board, and what it would send after changing it. */
const page = () => {
  const doc = new Y.Doc();
  Y.applyUpdate(doc, state);
  const changed = (change: (doc: Y.Doc) => void): Uint8Array => {
    const sent: Uint8Array[] = [];
    const listen = (update: Uint8Array) => sent.push(update);
    doc.on('update', listen);
    doc.transact(() => change(doc));
    doc.off('update', listen);
    return Y.mergeUpdates(sent);
  };
  return { doc, changed };
};
const moveGreen = (x: number) => (doc: Y.Doc) => {
  doc.getMap('holes').set('a/h1/green', { x, y: 1 });
};

test('a page’s change is new, and known once it has been applied', () => {
  const room = openedRoom();
  const update = page().changed(moveGreen(5));
  expect(room.offer(update, 'write')).toEqual({ kind: 'new', update });
  expect(room.offer(update, 'write')).toEqual({ kind: 'new', update }); // nothing is applied by offering
  room.apply(update);
  expect(room.offer(update, 'write')).toEqual({ kind: 'known' });
  expect(openPlan(room.state()).read().routings[0]?.holes[0]?.green?.centre).toEqual({ x: 5, y: 1 });
});

test('X2: a clean reader’s first step 2 carries a delete set and is known, not refused', () => {
  const { doc, changed } = page();
  const room = openedRoom();
  room.apply(changed(moveGreen(5)));
  const reader = new Y.Doc();
  Y.applyUpdate(reader, room.state());
  const step2 = Y.encodeStateAsUpdate(reader, room.vector());
  expect(step2.length).toBeGreaterThan(2);
  expect(room.offer(step2, 'read')).toEqual({ kind: 'known' });
  doc.destroy();
});

test('X2: a reader’s change is refused whole', () => {
  expect(openedRoom().offer(page().changed(moveGreen(5)), 'read')).toEqual({ kind: 'refused', code: 'not-a-writer' });
});

test('S4: a change that builds on one that has not arrived is early, and fine once it has', () => {
  const { changed } = page();
  const [first, second] = [changed(moveGreen(5)), changed(moveGreen(6))];
  const room = openedRoom();
  expect(room.offer(second, 'write')).toEqual({ kind: 'early' });
  room.apply(first);
  expect(room.offer(second, 'write')).toMatchObject({ kind: 'new' });
});

test('S4: a change that overwrites somebody’s value that has not arrived is early', () => {
  const ada = page();
  const grace = page();
  const first = ada.changed(moveGreen(5));
  Y.applyUpdate(grace.doc, first);
  const second = grace.changed(moveGreen(6));
  const room = openedRoom();
  expect(room.offer(second, 'write')).toEqual({ kind: 'early' });
  room.apply(first);
  expect(room.offer(second, 'write')).toMatchObject({ kind: 'new' });
});

test('two changes at once to one key both go in, whichever comes first', () => {
  const [one, two] = [page().changed(moveGreen(5)), page().changed(moveGreen(6))];
  for (const [first, second] of [[one, two] as const, [two, one] as const]) {
    const room = openedRoom();
    expect(room.offer(first, 'write').kind).toBe('new');
    room.apply(first);
    expect(room.offer(second, 'write').kind).toBe('new');
  }
});

test('the whole state of a page that lost against another goes in as one step 2', () => {
  const [ada, grace] = [page(), page()];
  const hers = ada.changed(moveGreen(5));
  grace.changed(moveGreen(6));
  const room = openedRoom();
  room.apply(hers);
  Y.applyUpdate(grace.doc, room.state());
  expect(room.offer(Y.encodeStateAsUpdate(grace.doc, room.vector()), 'write').kind).toBe('new');
});

const REFUSED: readonly (readonly [string, (doc: Y.Doc) => unknown])[] = [
  ['unknown-root', (doc: Y.Doc) => doc.getMap('elsewhere').set('k', 1)],
  ['bad-key', (doc: Y.Doc) => doc.getMap('holes').set('h1', 1)],
  ['bad-key', (doc: Y.Doc) => doc.getMap('holes').set('a/h1/__proto__', 1)],
  ['bad-key', (doc: Y.Doc) => doc.getMap('settings').set('x'.repeat(500), 1)],
  ['bad-key', (doc: Y.Doc) => doc.getArray('holes').push([1])],
  ['bad-key', (doc: Y.Doc) => doc.getMap('holes').delete('a/h1/green')],
  ['bad-value', (doc: Y.Doc) => doc.getMap('holes').set('a/h1/green', { x: Number.NaN, y: 0 })],
  ['bad-value', (doc: Y.Doc) => doc.getMap('holes').set('a/h1/green', undefined)],
  ['bad-value', (doc: Y.Doc) => doc.getMap('holes').set('a/h1/green', new Uint8Array(3))],
  ['bad-value', (doc: Y.Doc) => doc.getMap('holes').set('a/h1/green', new Y.Map())],
  ['bad-value', (doc: Y.Doc) => doc.getMap('holes').set('a/h1/green', new Y.Text('x'))],
  ['bad-value', (doc: Y.Doc) => doc.getMap('holes').set('a/h1/green', new Y.Doc())],
  ['bad-value', (doc: Y.Doc) => doc.getMap('holes').set('a/h1/green', [[[[[[[[[[1]]]]]]]]]])],
  ['too-large', (doc: Y.Doc) => doc.getMap('holes').set('a/h1/note', 'x'.repeat(LIMITS.mostValueBytes + 1))],
];
test.each(REFUSED)('X3: refused with %s (case %#)', (code, change) => {
  const room = openedRoom();
  const before = room.state();
  const update = page().changed((doc) => {
    change(doc);
  });
  expect(room.offer(update, 'write')).toEqual({ kind: 'refused', code });
  expect(room.state()).toEqual(before);
  expect(room.offer(page().changed(moveGreen(5)), 'write').kind).toBe('new'); // and the room goes on
});

test('X3: a key that is set and deleted in one go is refused, also when it was never there', () => {
  const update = page().changed((doc) => {
    doc.getMap('holes').set('a/h1/name', 'x');
    doc.getMap('holes').delete('a/h1/name');
  });
  expect(openedRoom().offer(update, 'write')).toEqual({ kind: 'refused', code: 'bad-key' });
});

test('X3: an object that smuggles in a prototype is refused', () => {
  const update = page().changed((doc) => {
    doc.getMap('holes').set('a/h1/green', JSON.parse('{"x":1,"y":2,"__proto__":{"polluted":true}}'));
  });
  expect(openedRoom().offer(update, 'write')).toMatchObject({ kind: 'refused' });
});

test('an update, or a document with it, above its limit is refused', () => {
  const update = page().changed(moveGreen(5));
  expect(openedRoom({ mostUpdateBytes: 10 }).offer(update, 'write')).toEqual({ kind: 'refused', code: 'too-large' });
  expect(openedRoom({ mostStateBytes: state.length + 5 }).offer(update, 'write')).toEqual({
    kind: 'refused',
    code: 'too-large',
  });
});

test('the record is written by the server alone', () => {
  const room = openRoom({ ...RULES, room: 'record' });
  expect(room.offer(state, 'write')).toEqual({ kind: 'refused', code: 'unknown-root' });
});

test('an update tried but never stored leaves no trace in what is offered next', () => {
  const room = openedRoom();
  const ada = page();
  room.offer(ada.changed(moveGreen(5)), 'write');
  room.forgo(); // the store failed: never applied
  const deletes = page().changed((doc) => {
    doc.getMap('holes').delete('a/h1/green');
  });
  expect(room.offer(deletes, 'write')).toEqual({ kind: 'refused', code: 'bad-key' });
});

test('changes of several pages that go into one commit are each tried on top of the others', () => {
  const room = openedRoom();
  const updates = [5, 6, 7].map((x) => page().changed(moveGreen(x)));
  for (const update of updates) expect(room.offer(update, 'write')).toEqual({ kind: 'new', update });
  for (const update of updates) room.apply(update);
  for (const update of updates) expect(room.offer(update, 'write')).toEqual({ kind: 'known' });
  const deletes = page().changed((doc) => {
    Y.applyUpdate(doc, room.state());
    doc.getMap('holes').delete('a/h1/green');
  });
  expect(room.offer(deletes, 'write').kind).toBe('refused');
});

test('a change under the number of one that is already there is refused, not called known', () => {
  const [ada, grace] = [page(), page()];
  grace.doc.clientID = ada.doc.clientID;
  const room = openedRoom();
  room.apply(ada.changed(moveGreen(5)));
  expect(room.offer(grace.changed(moveGreen(6)), 'write')).toEqual({ kind: 'refused', code: 'malformed' });
});

test('thousands of rival values for one key in one update are refused: each is weighed against each', () => {
  const rivals = Array.from({ length: 2000 }, () => {
    const doc = new Y.Doc();
    doc.getMap('site').set('note', 'x');
    const update = Y.encodeStateAsUpdate(doc);
    doc.destroy();
    return update;
  });
  const [few, many] = [Y.mergeUpdates(rivals.slice(0, 200)), Y.mergeUpdates(rivals)];
  expect(openedRoom().offer(few, 'write').kind).toBe('new');
  expect(openedRoom().offer(many, 'write')).toEqual({ kind: 'refused', code: 'malformed' });
});

test('any bytes are refused or known, change nothing, and never throw', () => {
  const room = openedRoom();
  const before = room.state();
  const real = page().changed(moveGreen(5));
  const mutated = fc
    .array(fc.tuple(fc.nat(real.length - 1), fc.nat(255)), { minLength: 1, maxLength: 4 })
    .map((changes) => {
      const copy = Uint8Array.from(real);
      for (const [at, byte] of changes) copy[at] = byte;
      return copy;
    });
  fc.assert(
    fc.property(fc.oneof(fc.uint8Array({ maxLength: 60 }), mutated), (bytes) => {
      expect(['new', 'known', 'early', 'refused']).toContain(room.offer(bytes, 'write').kind);
      expect(room.state()).toEqual(before);
    }),
    { numRuns: 400 },
  );
});

test('whoever asks with rubbish for what it lacks gets everything', () => {
  const room = openedRoom();
  expect(room.missing(Uint8Array.from([255, 255, 255]))).toEqual(room.state());
});
