import type { Reading } from '../reading/reading.ts';
import type { EditNamed, EditWrites } from './edit-named.ts';
import { openHole } from './open-hole.ts';
import { seatInLoop } from './seat-hole.ts';

/** Brings a spare hole back into the round. One that somebody else has already brought back is moved to this place. */
export function bringBack(edit: EditNamed<'bring back'>, reading: Reading): EditWrites {
  const open = openHole(reading, edit);
  return typeof open === 'string' ? open : seatInLoop(open, edit.loop, edit.after);
}
