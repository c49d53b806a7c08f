import { holeOf } from '@loopwright/model';
import type { Reading } from '../reading/reading.ts';
import type { EditNamed, EditWrites } from './edit-named.ts';
import { openHole, writeOfHole } from './open-hole.ts';

/** Two holes change places in the round, or in and out of the tray. */
export function swapPlaces(edit: EditNamed<'swap places'>, reading: Reading): EditWrites {
  const open = openHole(reading, edit);
  if (typeof open === 'string') return open;
  const other = holeOf(open.routing, edit.with);
  if (!other || other.seat.in === 'removed') return 'gone';
  if (other.id === open.hole.id) return 'nothing';
  return [open.write('seat', other.seat), writeOfHole(open.routing.id, other.id, 'seat', open.hole.seat)];
}
