import type { Reading } from '../reading/reading.ts';
import type { EditNamed, EditWrites } from './edit-named.ts';
import { openHole } from './open-hole.ts';
import { seatInLoop } from './seat-hole.ts';

/** Gives a hole another place in the playing order. Numbers follow. A hole that was taken out meanwhile stays out. */
export function moveInTheRound(edit: EditNamed<'move in the round'>, reading: Reading): EditWrites {
  const open = openHole(reading, edit);
  if (typeof open === 'string') return open;
  return open.hole.seat.in === 'loop' ? seatInLoop(open, edit.loop, edit.after) : 'gone';
}
