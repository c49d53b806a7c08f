import { openRoom, type RoomDocument } from '@loopwright/document/server';
import type { ServerLimits } from '../limits.ts';
import { type Log, reasonOf } from '../log.ts';
import type { RoomKey, Store } from '../storage/store.ts';
import { roomRules } from './rules.ts';

export interface LoadPorts {
  readonly store: Store;
  readonly limits: ServerLimits;
  readonly log: Log;
}

/**
 * A room's document as the store holds it.
 *
 * A long log is compacted here, before anybody is let in: nothing can be pending then. On a full disk that fails, and
 * the room opens all the same: people can read, and nothing is lost.
 *
 * Cost: O(bytes stored).
 */
export async function loadRoom(key: RoomKey, { store, limits, log }: LoadPorts): Promise<RoomDocument> {
  const { updates, through } = await store.roomLog(key);
  const document = openRoom(roomRules(key.room, limits));
  for (const update of updates) document.apply(update);
  if (updates.length >= limits.compactFrom)
    await store
      .compact(key, document.state(), through)
      .catch((failure: unknown) => log.warn('log-not-compacted', { board: key.board, reason: reasonOf(failure) }));
  return document;
}
