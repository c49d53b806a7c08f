import type { Role, RoomName } from '../storage/store.ts';

/**
 * What a role may do in a room: designers write the plan; the record is written by the server alone.
 */
export function rightsOf(role: Role, room: RoomName): 'read' | 'write' {
  return room === 'plan' && role === 'designer' ? 'write' : 'read';
}
