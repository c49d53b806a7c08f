import SQLite from 'better-sqlite3';
import { Kysely, SqliteDialect } from 'kysely';
import { sqlStore } from './sql-store.ts';
import type { Store } from './store.ts';
import { makeTables, type Tables } from './tables.ts';

/**
 * The store in one SQLite file.
 *
 * A commit is on the disk when its promise is kept: write-ahead log, synchronous FULL.
 *
 * @param file  its path, or `:memory:` for a test
 * @throws when the file cannot be opened or written: there is no server without it
 */
export async function openSqliteStore(file: string): Promise<Store> {
  const database = new SQLite(file);
  database.pragma('journal_mode = WAL');
  database.pragma('synchronous = FULL');
  database.pragma('foreign_keys = ON');
  database.pragma('busy_timeout = 2000');
  const db = new Kysely<Tables>({ dialect: new SqliteDialect({ database }) });
  await makeTables(db, 'blob');
  return sqlStore(db);
}
