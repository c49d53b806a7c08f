import { parseCorridor } from '@loopwright/model';
import type { Reading } from '../reading/reading.ts';
import type { EditNamed, EditWrites } from './edit-named.ts';
import { openHole } from './open-hole.ts';

/** Gives a hole its own corridor widths, all of them one decision; `null` goes back to the board's settings. */
export function setCorridor(edit: EditNamed<'set corridor'>, reading: Reading): EditWrites {
  const open = openHole(reading, edit);
  if (typeof open === 'string') return open;
  const corridor = edit.corridor && parseCorridor(edit.corridor);
  return corridor === undefined ? 'nothing' : [open.write('corridor', corridor)];
}
