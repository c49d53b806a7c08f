import type { Kysely } from 'kysely';
import { inTransaction } from './in-transaction.ts';
import type { RoomKey, RoomLog } from './store.ts';
import type { Database, Tables } from './tables.ts';

/** The next free number of a room's log, taken for `count` entries. The row touched here is where an owner's lease is checked. */
async function takeEntries(db: Kysely<Tables>, { board, room }: RoomKey, count: number): Promise<number> {
  const taken = await db
    .updateTable('rooms')
    .set((row) => ({ last_entry: row('last_entry', '+', count) }))
    .where('board', '=', board)
    .where('room', '=', room)
    .returning('last_entry')
    .executeTakeFirst();
  if (taken) return Number(taken.last_entry) - count + 1;
  await db.insertInto('rooms').values({ board, room, last_entry: count }).execute();
  return 1;
}

/** Adds entries within a transaction of the caller's. */
export async function appendWithin(db: Kysely<Tables>, key: RoomKey, updates: readonly Uint8Array[]): Promise<void> {
  const first = await takeEntries(db, key, updates.length);
  const rows = updates.map((bytes, index) => ({ ...key, entry: first + index, bytes }));
  await db.insertInto('updates').values(rows).execute();
}

export async function readLog(db: Database, { board, room }: RoomKey): Promise<RoomLog> {
  const rows = await db
    .selectFrom('updates')
    .select(['entry', 'bytes'])
    .where('board', '=', board)
    .where('room', '=', room)
    .orderBy('entry')
    .execute();
  return { updates: rows.map((row) => new Uint8Array(row.bytes)), through: Number(rows.at(-1)?.entry ?? 0) };
}

/** The state takes the number of the last entry it holds, so that later ones stay after it. */
export async function compactLog(db: Database, key: RoomKey, state: Uint8Array, through: number): Promise<void> {
  await inTransaction(db, async (within) => {
    await within
      .deleteFrom('updates')
      .where('board', '=', key.board)
      .where('room', '=', key.room)
      .where('entry', '<=', through)
      .execute();
    await within
      .insertInto('updates')
      .values({ ...key, entry: through, bytes: state })
      .execute();
  });
}
