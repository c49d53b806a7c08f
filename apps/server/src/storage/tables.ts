import type { Kysely } from 'kysely';

/** The tables as SQL has them: the same for SQLite and for PostgreSQL. */
export interface Tables {
  readonly boards: { id: string; name: string; created_at: number };
  readonly links: {
    id: string;
    board: string;
    secret_hash: string;
    role: string;
    revoked: number;
    ends_at: number | null;
  };
  readonly memberships: {
    id: string;
    board: string;
    link: string;
    token_hash: string;
    name: string;
    ink: number;
    epoch: number;
  };
  /** `last_entry` numbers the log; an owner's lease will be checked in the row that every append touches. */
  readonly rooms: { board: string; room: string; last_entry: number };
  readonly updates: { board: string; room: string; entry: number; bytes: Uint8Array };
  readonly board_blobs: { board: string; hash: string };
  readonly checks: { id: number; at: number };
}

export type Database = Kysely<Tables>;

/** What bytes are called in each dialect. */
export type BytesType = 'blob' | 'bytea';

/** Makes what is missing; changes nothing that is there. */
export async function makeTables(db: Database, bytes: BytesType): Promise<void> {
  await db.schema
    .createTable('boards')
    .ifNotExists()
    .addColumn('id', 'text', (column) => column.primaryKey())
    .addColumn('name', 'text', (column) => column.notNull())
    .addColumn('created_at', 'bigint', (column) => column.notNull())
    .execute();
  await db.schema
    .createTable('links')
    .ifNotExists()
    .addColumn('id', 'text', (column) => column.primaryKey())
    .addColumn('board', 'text', (column) => column.notNull())
    .addColumn('secret_hash', 'text', (column) => column.notNull())
    .addColumn('role', 'text', (column) => column.notNull())
    .addColumn('revoked', 'integer', (column) => column.notNull())
    .addColumn('ends_at', 'bigint')
    .addUniqueConstraint('links_by_secret', ['board', 'secret_hash'])
    .execute();
  await makeMemberships(db);
  await makeRooms(db, bytes);
}

async function makeMemberships(db: Database): Promise<void> {
  await db.schema
    .createTable('memberships')
    .ifNotExists()
    .addColumn('id', 'text', (column) => column.primaryKey())
    .addColumn('board', 'text', (column) => column.notNull())
    .addColumn('link', 'text', (column) => column.notNull())
    .addColumn('token_hash', 'text', (column) => column.notNull())
    .addColumn('name', 'text', (column) => column.notNull())
    .addColumn('ink', 'integer', (column) => column.notNull())
    .addColumn('epoch', 'integer', (column) => column.notNull())
    .execute();
  await db.schema.createIndex('memberships_by_board').ifNotExists().on('memberships').column('board').execute();
}

async function makeRooms(db: Database, bytes: BytesType): Promise<void> {
  await db.schema
    .createTable('rooms')
    .ifNotExists()
    .addColumn('board', 'text', (column) => column.notNull())
    .addColumn('room', 'text', (column) => column.notNull())
    .addColumn('last_entry', 'bigint', (column) => column.notNull())
    .addPrimaryKeyConstraint('rooms_key', ['board', 'room'])
    .execute();
  await db.schema
    .createTable('updates')
    .ifNotExists()
    .addColumn('board', 'text', (column) => column.notNull())
    .addColumn('room', 'text', (column) => column.notNull())
    .addColumn('entry', 'bigint', (column) => column.notNull())
    .addColumn('bytes', bytes === 'blob' ? 'blob' : 'bytea', (column) => column.notNull())
    .addPrimaryKeyConstraint('updates_key', ['board', 'room', 'entry'])
    .execute();
  await db.schema
    .createTable('board_blobs')
    .ifNotExists()
    .addColumn('board', 'text', (column) => column.notNull())
    .addColumn('hash', 'text', (column) => column.notNull())
    .addPrimaryKeyConstraint('board_blobs_key', ['board', 'hash'])
    .execute();
  await db.schema
    .createTable('checks')
    .ifNotExists()
    .addColumn('id', 'integer', (column) => column.primaryKey())
    .addColumn('at', 'bigint', (column) => column.notNull())
    .execute();
}
