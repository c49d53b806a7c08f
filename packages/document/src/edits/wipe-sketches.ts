import type { Write } from '../cells.ts';
import type { Reading } from '../reading/reading.ts';
import type { EditNamed, EditWrites } from './edit-named.ts';
import { removeThings } from './remove-things.ts';
import { SKETCHES } from './thing-kinds.ts';

/**
 * Wipes sketches off the table. Their points are let go of too, since a day's pencil would otherwise outweigh the plan
 * it was drawn on; undo puts them back from what the page that wiped them remembers.
 */
export function wipeSketches(edit: EditNamed<'wipe sketches'>, reading: Reading): EditWrites {
  const seats = removeThings(SKETCHES, reading, edit.sketches);
  if (typeof seats === 'string') return seats;
  return seats.flatMap((seat): readonly Write[] => [seat, { ...seat, part: 'shape', value: null }]);
}
