import { LIMITS, parseLines } from '@loopwright/model';
import type { Reading } from '../reading/reading.ts';
import type { EditNamed, EditWrites } from './edit-named.ts';
import { openHole } from './open-hole.ts';

/** Keeps a note with a hole; an empty one takes it away. */
export function noteHole(edit: EditNamed<'note hole'>, reading: Reading): EditWrites {
  const open = openHole(reading, edit);
  if (typeof open === 'string') return open;
  const note = parseLines(edit.note, LIMITS.note) || null;
  return note === (open.hole.note ?? null) ? 'nothing' : [open.write('note', note)];
}
