import type { RoomRules } from '@loopwright/document/server';
import type { ServerLimits } from '../limits.ts';
import type { RoomName } from '../storage/store.ts';

/** What a room's document may hold. */
export function roomRules(room: RoomName, limits: ServerLimits): RoomRules {
  return { room, mostUpdateBytes: limits.updateBytes, mostStateBytes: limits.stateBytes };
}

/** The rules of the room that designers write. */
export function planRules(limits: ServerLimits): RoomRules {
  return roomRules('plan', limits);
}
