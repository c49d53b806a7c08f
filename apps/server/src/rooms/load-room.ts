import { openRoom, type RoomDocument } from '@loopwright/document/server';
import type { ServerLimits } from '../limits.ts';
import type { RoomKey, Store } from '../storage/store.ts';
import { roomRules } from './rules.ts';

/**
 * A room's document as the store holds it.
 *
 * A long log is compacted here, before anybody is let in: nothing can be pending then.
 *
 * Cost: O(bytes stored).
 */
export async function loadRoom(key: RoomKey, store: Store, limits: ServerLimits): Promise<RoomDocument> {
  const { updates, through } = await store.roomLog(key);
  const document = openRoom(roomRules(key.room, limits));
  for (const update of updates) document.apply(update);
  if (updates.length >= limits.compactFrom) await store.compact(key, document.state(), through);
  return document;
}
