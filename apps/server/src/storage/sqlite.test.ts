import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { openSqliteStore } from './sqlite.ts';
import type { Link, Store } from './store.ts';

const BOARD = { id: 'b1', name: 'North links', createdAt: 1_800_000_000_000 };
const LINK: Link = { id: 'l1', board: 'b1', secretHash: 'aa', role: 'designer', revoked: false };
const PLAN = { board: 'b1', room: 'plan' } as const;
const bytes = (...values: number[]) => new Uint8Array(values);

let store: Store;
beforeEach(async () => {
  store = await openSqliteStore(':memory:');
  await store.addBoard(BOARD, LINK, bytes(1));
});
afterEach(() => store.close());

test('a new board has its link and the first state of its plan', async () => {
  expect(await store.board('b1')).toEqual(BOARD);
  expect(await store.linkOf('b1', 'aa')).toEqual(LINK);
  expect(await store.roomLog(PLAN)).toEqual({ updates: [bytes(1)], through: 1 });
});

test('a board that cannot be made whole is not made at all', async () => {
  await expect(store.addBoard({ ...BOARD, id: 'b2' }, LINK, bytes(2))).rejects.toThrow();
  expect(await store.board('b2')).toBeUndefined();
});

test('updates come back in the order they were committed', async () => {
  await store.append(PLAN, [bytes(2), bytes(3)]);
  await store.append(PLAN, [bytes(4)]);
  expect(await store.roomLog(PLAN)).toEqual({ updates: [bytes(1), bytes(2), bytes(3), bytes(4)], through: 4 });
});

test('a room nobody wrote in is empty', async () => {
  expect(await store.roomLog({ board: 'b1', room: 'record' })).toEqual({ updates: [], through: 0 });
});

test('compacting keeps what was appended meanwhile, after the compacted state', async () => {
  await store.append(PLAN, [bytes(2)]);
  const { through } = await store.roomLog(PLAN);
  await store.append(PLAN, [bytes(3)]);
  await store.compact(PLAN, bytes(12), through);
  expect((await store.roomLog(PLAN)).updates).toEqual([bytes(12), bytes(3)]);
  await store.append(PLAN, [bytes(4)]);
  expect((await store.roomLog(PLAN)).updates).toEqual([bytes(12), bytes(3), bytes(4)]);
});

test('a revoked link stays known as revoked', async () => {
  await store.revokeLink('l1');
  expect(await store.link('l1')).toEqual({ ...LINK, revoked: true });
});

test('a link keeps its end', async () => {
  await store.addLink({ ...LINK, id: 'l2', secretHash: 'bb', endsAt: 5 });
  expect((await store.link('l2'))?.endsAt).toBe(5);
});

test('the epoch of a membership only rises', async () => {
  const membership = { id: 'm1', board: 'b1', link: 'l1', tokenHash: 'cc', name: 'Ada', ink: 3, epoch: 1 };
  await store.addMembership(membership);
  expect(await store.raiseEpoch('m1')).toBe(2);
  expect(await store.membership('m1')).toEqual({ ...membership, epoch: 2 });
  expect(await store.countMemberships('b1')).toBe(1);
});

test('an image belongs to the board it was sent to, and to no other', async () => {
  await store.addBlob('b1', 'ff');
  await store.addBlob('b1', 'ff');
  expect(await store.hasBlob('b1', 'ff')).toBe(true);
  expect(await store.hasBlob('b2', 'ff')).toBe(false);
});

test('what was committed is there when the file is opened again', async () => {
  const directory = await mkdtemp(join(tmpdir(), 'loopwright-store-'));
  const file = join(directory, 'boards.sqlite');
  const first = await openSqliteStore(file);
  await first.addBoard(BOARD, LINK, bytes(7));
  await first.check();
  await first.close();
  const second = await openSqliteStore(file);
  expect((await second.roomLog(PLAN)).updates).toEqual([bytes(7)]);
  await second.close();
  await rm(directory, { recursive: true });
});
