import type { Reading } from '../reading/reading.ts';
import type { EditNamed, EditWrites } from './edit-named.ts';
import { openHole } from './open-hole.ts';

/** Takes a tee placed by hand away, and its pin with it, so that it is proposed again. `nothing` when it was not placed. */
export function proposeTee(edit: EditNamed<'propose tee'>, reading: Reading): EditWrites {
  const open = openHole(reading, edit);
  if (typeof open === 'string') return open;
  if (!Object.hasOwn(open.hole.tees, edit.teeSet)) return 'nothing';
  const part = `tee:${edit.teeSet}` as const;
  const isPinned = open.hole.pinned.includes(part);
  return [open.write(part, null), ...(isPinned ? [open.write(`pin:${part}`, null)] : [])];
}
