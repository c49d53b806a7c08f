import 'fake-indexeddb/auto';
import { expect, test } from 'vitest';
import * as Y from 'yjs';
import { openOfflineCopy } from './offline-copy.ts';

const value = (doc: Y.Doc) => doc.getMap('holes').get('a/h1/green');
/** Waits until what was written is on the machine: a second opening of the same database comes after it. */
const reopened = async (name: string) => {
  const doc = new Y.Doc();
  const copy = await openOfflineCopy(name, doc);
  copy.close();
  return doc;
};

test('what was done offline is there when the page is opened again', async () => {
  const doc = new Y.Doc();
  const copy = await openOfflineCopy('board/m/1', doc);
  expect(copy.kept).toBe(true);
  doc.getMap('holes').set('a/h1/green', { x: 1, y: 2 });
  copy.close();
  expect(value(await reopened('board/m/1'))).toEqual({ x: 1, y: 2 });
});

test('a membership’s copy under another epoch is another copy', async () => {
  const doc = new Y.Doc();
  const copy = await openOfflineCopy('board/n/1', doc);
  doc.getMap('holes').set('a/h1/green', { x: 1, y: 2 });
  copy.close();
  expect(value(await reopened('board/n/2'))).toBeUndefined();
});

test('a page that may keep nothing works on, and says so', async () => {
  const refusing = {
    open: () => {
      throw new DOMException('denied', 'SecurityError');
    },
  };
  const real = globalThis.indexedDB;
  Object.defineProperty(globalThis, 'indexedDB', { value: refusing, configurable: true });
  const copy = await openOfflineCopy('board/p/1', new Y.Doc());
  Object.defineProperty(globalThis, 'indexedDB', { value: real, configurable: true });
  expect(copy.kept).toBe(false);
});
