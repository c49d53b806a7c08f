import { parseGreenShape } from '@loopwright/model';
import type { Reading } from '../reading/reading.ts';
import type { EditNamed, EditWrites } from './edit-named.ts';
import { openHole } from './open-hole.ts';

/**
 * Gives a green its length, width and lie, or an outline of its own; its centre stays.
 *
 * @returns `nothing` on a hole without a green, or for a size no green has
 */
export function shapeGreen(edit: EditNamed<'shape green'>, reading: Reading): EditWrites {
  const open = openHole(reading, edit);
  if (typeof open === 'string') return open;
  const shape = parseGreenShape(edit.shape);
  return open.hole.green && shape ? [open.write('green-shape', shape)] : 'nothing';
}
