import type { Reading } from '../reading/reading.ts';
import type { EditNamed, EditWrites } from './edit-named.ts';
import { openHole } from './open-hole.ts';

/** Fixes a hole's par for men or women, or lets it follow from the length. */
export function setPar(edit: EditNamed<'set par'>, reading: Reading): EditWrites {
  const open = openHole(reading, edit);
  if (typeof open === 'string') return open;
  return open.hole.par[edit.sex] === edit.par ? 'nothing' : [open.write(`par-${edit.sex}`, edit.par)];
}
