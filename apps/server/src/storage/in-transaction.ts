import type { Kysely } from 'kysely';
import type { Tables } from './tables.ts';

/** What SQLite answers to a rollback after it has rolled back by itself. */
const ROLLED_BACK_ALREADY = 'cannot rollback - no transaction is active';

/**
 * Does all of the work or none of it. When the disk is full SQLite rolls back by itself, and the words of that failure
 * are lost on the query builder, which tries to roll back again: they are said here.
 */
export async function inTransaction<T>(db: Kysely<Tables>, work: (within: Kysely<Tables>) => Promise<T>): Promise<T> {
  try {
    return await db.transaction().execute(work);
  } catch (failure) {
    if (!(failure instanceof Error) || failure.message !== ROLLED_BACK_ALREADY) throw failure;
    const words = 'the database rolled back by itself, as it does when the disk is full or fails';
    throw Object.assign(new Error(words, { cause: failure }), { code: 'SQLITE_FULL' });
  }
}
