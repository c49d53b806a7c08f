import type { Reading } from '../reading/reading.ts';
import type { EditNamed, EditWrites } from './edit-named.ts';
import { openHole } from './open-hole.ts';

/** Takes a turn out of a hole's line of play, and its pin with it. */
export function removeTurnPoint(edit: EditNamed<'remove turn point'>, reading: Reading): EditWrites {
  const open = openHole(reading, edit);
  if (typeof open === 'string') return open;
  if (!open.hole.turnPoints.some(({ id }) => id === edit.turn)) return 'gone';
  const part = `turn:${edit.turn}` as const;
  const isPinned = open.hole.pinned.includes(part);
  return [open.write(part, null), ...(isPinned ? [open.write(`pin:${part}`, null)] : [])];
}
