import { join } from 'node:path';
import SQLite from 'better-sqlite3';

/** A directory of data that this process alone serves, as long as this is referred to: forgotten, it is released. */
export interface HeldFolder {
  release(): void;
}

/** Says who has the directory; holds nothing. */
const NOTE = 'in-use.lock';

/**
 * Takes a directory for this process; `undefined` while another one has it.
 *
 * Rooms are kept in memory: two servers over one store would each show their people a board of its own. The lock is the
 * operating system's, by way of an SQLite file: it goes with the process, however that ends, so that a server that was
 * killed leaves nothing to clear away.
 */
export function takeFolder(directory: string): HeldFolder | undefined {
  const database = new SQLite(join(directory, NOTE), { timeout: 0 });
  try {
    database.exec('BEGIN EXCLUSIVE');
    return { release: () => database.close() };
  } catch (failure) {
    database.close();
    if (failure instanceof SQLite.SqliteError && failure.code.startsWith('SQLITE_BUSY')) return undefined;
    throw failure;
  }
}
