import { inTransaction } from './in-transaction.ts';
import { appendWithin, compactLog, readLog } from './room-log.ts';
import { linkOfRow, membershipOfRow, rowOfLink, rowOfMembership } from './rows.ts';
import type { Store } from './store.ts';
import type { Database } from './tables.ts';

/** The store over any SQL database that kysely speaks to; `tables.ts` made its tables. */
export function sqlStore(db: Database): Store {
  return {
    ...boardsIn(db),
    ...linksIn(db),
    ...membershipsIn(db),
    ...blobsIn(db),
    roomLog: (key) => readLog(db, key),
    append: (key, updates) => inTransaction(db, (within) => appendWithin(within, key, updates)),
    compact: (key, state, through) => compactLog(db, key, state, through),
    async check() {
      await db
        .insertInto('checks')
        .values({ id: 1, at: 0 })
        .onConflict((conflict) => conflict.column('id').doUpdateSet((row) => ({ at: row('checks.at', '+', 1) })))
        .execute();
    },
    close: () => db.destroy(),
  };
}

function boardsIn(db: Database): Pick<Store, 'addBoard' | 'board'> {
  return {
    async addBoard(board, link, plan) {
      await inTransaction(db, async (within) => {
        await within
          .insertInto('boards')
          .values({ id: board.id, name: board.name, created_at: board.createdAt })
          .execute();
        await within.insertInto('links').values(rowOfLink(link)).execute();
        await appendWithin(within, { board: board.id, room: 'plan' }, [plan]);
      });
    },
    async board(id) {
      const row = await db.selectFrom('boards').selectAll().where('id', '=', id).executeTakeFirst();
      return row && { id: row.id, name: row.name, createdAt: Number(row.created_at) };
    },
  };
}

function linksIn(db: Database): Pick<Store, 'addLink' | 'link' | 'linkOf' | 'revokeLink'> {
  return {
    async addLink(link) {
      await db.insertInto('links').values(rowOfLink(link)).execute();
    },
    async link(id) {
      const row = await db.selectFrom('links').selectAll().where('id', '=', id).executeTakeFirst();
      return row && linkOfRow(row);
    },
    async linkOf(board, secretHash) {
      const row = await db
        .selectFrom('links')
        .selectAll()
        .where('board', '=', board)
        .where('secret_hash', '=', secretHash)
        .executeTakeFirst();
      return row && linkOfRow(row);
    },
    async revokeLink(id) {
      await db.updateTable('links').set({ revoked: 1 }).where('id', '=', id).execute();
    },
  };
}

function membershipsIn(db: Database): Pick<Store, 'addMembership' | 'membership' | 'countMemberships' | 'raiseEpoch'> {
  return {
    async addMembership(membership) {
      await db.insertInto('memberships').values(rowOfMembership(membership)).execute();
    },
    async membership(id) {
      const row = await db.selectFrom('memberships').selectAll().where('id', '=', id).executeTakeFirst();
      return row && membershipOfRow(row);
    },
    async countMemberships(board) {
      const { count } = await db
        .selectFrom('memberships')
        .select((row) => row.fn.countAll().as('count'))
        .where('board', '=', board)
        .executeTakeFirstOrThrow();
      return Number(count);
    },
    async raiseEpoch(membership) {
      const { epoch } = await db
        .updateTable('memberships')
        .set((row) => ({ epoch: row('epoch', '+', 1) }))
        .where('id', '=', membership)
        .returning('epoch')
        .executeTakeFirstOrThrow();
      return epoch;
    },
  };
}

function blobsIn(db: Database): Pick<Store, 'addBlob' | 'hasBlob'> {
  return {
    async addBlob(board, hash) {
      await db
        .insertInto('board_blobs')
        .values({ board, hash })
        .onConflict((conflict) => conflict.columns(['board', 'hash']).doNothing())
        .execute();
    },
    async hasBlob(board, hash) {
      const row = await db
        .selectFrom('board_blobs')
        .select('hash')
        .where('board', '=', board)
        .where('hash', '=', hash)
        .executeTakeFirst();
      return row !== undefined;
    },
  };
}
