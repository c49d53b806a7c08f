import { LIMITS, parseName } from '@loopwright/model';
import type { Reading } from '../reading/reading.ts';
import type { EditNamed, EditWrites } from './edit-named.ts';
import { openHole } from './open-hole.ts';

/** Gives a hole a name; an empty one takes it away. */
export function nameHole(edit: EditNamed<'name hole'>, reading: Reading): EditWrites {
  const open = openHole(reading, edit);
  if (typeof open === 'string') return open;
  const name = parseName(edit.name, LIMITS.name) ?? null;
  return name === (open.hole.name ?? null) ? 'nothing' : [open.write('name', name)];
}
