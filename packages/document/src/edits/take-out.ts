import type { Reading } from '../reading/reading.ts';
import type { EditNamed, EditWrites } from './edit-named.ts';
import { openHole } from './open-hole.ts';
import { seatInTray } from './seat-hole.ts';

/** Takes a hole out of the round: it stays on the plan as a spare one, at the end of the tray. */
export function takeOut(edit: EditNamed<'take out'>, reading: Reading): EditWrites {
  const open = openHole(reading, edit);
  return typeof open === 'string' ? open : seatInTray(open);
}
