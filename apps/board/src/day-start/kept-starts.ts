import { isFields, type Plan, parseNumber, parsePlan } from '@loopwright/model';
import { type DBSchema, openDB } from 'idb';
import { isSameDay } from './day-words.ts';

/** The plan as a day on this machine began. */
export interface DayStart {
  /** Milliseconds since 1970. */
  readonly at: number;
  readonly plan: Plan;
}

interface StartsSchema extends DBSchema {
  readonly starts: {
    readonly key: string;
    readonly value: { readonly board: string; readonly at: number; readonly plan: unknown };
    readonly indexes: { readonly at: number };
  };
}

const DATABASE = 'loopwright day starts';
/** Boards whose last start is kept; those opened longest ago go. */
const MOST_BOARDS = 12;

/**
 * The plan as it was when this board was first opened today, or `plan` if that is now: then it is kept, in place of an
 * older day's. Never rejects: a browser that keeps nothing begins its day now.
 *
 * @param board  tells boards, and memberships of one, apart
 */
export async function startOfDay(board: string, now: Date, plan: Plan): Promise<DayStart> {
  const fresh: DayStart = { at: now.getTime(), plan };
  try {
    const database = await openDB<StartsSchema>(DATABASE, 1, {
      upgrade: (made) => made.createObjectStore('starts', { keyPath: 'board' }).createIndex('at', 'at'),
    });
    const write = database.transaction('starts', 'readwrite');
    const kept = parseStart(await write.store.get(board));
    const isToday = kept !== undefined && isSameDay(new Date(kept.at), now);
    if (!isToday) {
      await write.store.put({ board, ...fresh });
      const oldestFirst = await write.store.index('at').getAllKeys();
      for (const old of oldestFirst.slice(0, -MOST_BOARDS)) await write.store.delete(old);
    }
    await write.done;
    database.close();
    return isToday ? kept : fresh;
  } catch (error) {
    if (!(error instanceof Error)) throw error;
    return fresh; // storage is switched off, full, or somebody else's: the day begins when the page is opened
  }
}

/** What this machine kept is read like a file from outside. */
function parseStart(value: unknown): DayStart | undefined {
  if (!isFields(value)) return undefined;
  const at = parseNumber(value.at, 0, Number.MAX_SAFE_INTEGER);
  const read = parsePlan(value.plan);
  return at !== undefined && read.kind === 'plan' ? { at, plan: read.plan } : undefined;
}
