import type { Reading } from '../reading/reading.ts';
import type { EditNamed, EditWrites } from './edit-named.ts';
import { openHole } from './open-hole.ts';

/** Takes a hole off the plan. Only its seat says so: everything about it is kept, and undo brings it back. */
export function removeHole(edit: EditNamed<'remove hole'>, reading: Reading): EditWrites {
  const open = openHole(reading, edit);
  return typeof open === 'string' ? open : [open.write('seat', { in: 'removed', key: open.hole.seat.key })];
}
