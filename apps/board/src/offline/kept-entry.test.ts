import type { EnterAnswer } from '@loopwright/protocol';
import { expect, test } from 'vitest';
import { openKeptEntries, shortDigest } from './kept-entry.ts';

const ANSWER: EnterAnswer = { board: 'b1', membership: 'm1', epoch: 2, role: 'designer', name: 'Ann', ink: 3 };

function paperStorage() {
  const kept = new Map<string, string>();
  return {
    kept,
    getItem: (name: string) => kept.get(name) ?? null,
    setItem: (name: string, value: string) => void kept.set(name, value),
    removeItem: (name: string) => void kept.delete(name),
  };
}

test('a board entered before is found again by its link, and by no other link', async () => {
  const entries = openKeptEntries(paperStorage(), shortDigest);
  await entries.keep('the secret', ANSWER);
  expect(await entries.find('b1', 'the secret')).toEqual(ANSWER);
  expect(await entries.find('b1', 'another secret')).toBeUndefined();
  expect(await entries.find('b2', 'the secret')).toBeUndefined();
});

test('the secret is not kept', async () => {
  const storage = paperStorage();
  await openKeptEntries(storage, shortDigest).keep('the secret', ANSWER);
  expect(JSON.stringify([...storage.kept])).not.toContain('the secret');
});

test('a refused link is forgotten', async () => {
  const entries = openKeptEntries(paperStorage(), shortDigest);
  await entries.keep('the secret', ANSWER);
  await entries.forget('b1', 'the secret');
  expect(await entries.find('b1', 'the secret')).toBeUndefined();
});

test.each(['', '{', 'null', '{"board":"b1"}'])('what was kept as %j opens nothing', async (text) => {
  const storage = { ...paperStorage(), getItem: () => text };
  expect(await openKeptEntries(storage, shortDigest).find('b1', 's')).toBeUndefined();
});

test('without a digest, or without storage, nothing is kept and nothing fails', async () => {
  const storage = paperStorage();
  await openKeptEntries(storage, async () => undefined).keep('s', ANSWER);
  expect(storage.kept.size).toBe(0);
  const forbidden = () => {
    throw new DOMException('no storage here', 'SecurityError');
  };
  const closed = openKeptEntries({ getItem: forbidden, setItem: forbidden, removeItem: forbidden }, shortDigest);
  await closed.keep('s', ANSWER);
  expect(await closed.find('b1', 's')).toBeUndefined();
});
