import SQLite from 'better-sqlite3';
import { Kysely, SqliteDialect } from 'kysely';
import { expect, test } from 'vitest';
import { sqlStore } from './sql-store.ts';
import { makeTables, type Tables } from './tables.ts';

const KEY = { board: 'b1', room: 'plan' } as const;

test('a database without room says so, keeps nothing of the call, and goes on when there is room again', async () => {
  const database = new SQLite(':memory:');
  const db = new Kysely<Tables>({ dialect: new SqliteDialect({ database }) });
  await makeTables(db, 'blob');
  const store = sqlStore(db);
  await store.append(KEY, [new Uint8Array([1])]);
  const pages = Number(database.pragma('page_count', { simple: true }));
  database.pragma(`max_page_count = ${pages + 2}`);
  const large = new Uint8Array(100_000);
  await expect(store.append(KEY, [new Uint8Array([2]), large])).rejects.toMatchObject({
    code: 'SQLITE_FULL',
    message: expect.stringContaining('full'),
  });
  expect((await store.roomLog(KEY)).updates).toEqual([new Uint8Array([1])]);
  database.pragma('max_page_count = 100000');
  await store.append(KEY, [large]);
  expect((await store.roomLog(KEY)).updates).toEqual([new Uint8Array([1]), large]);
  await store.close();
});
