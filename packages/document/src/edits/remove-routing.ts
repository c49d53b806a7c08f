import type { Reading } from '../reading/reading.ts';
import type { EditNamed, EditWrites } from './edit-named.ts';
import { openRouting } from './open-routing.ts';
import { unseatThing } from './seat-thing.ts';

/** Takes a routing off the board; undo brings it back. `nothing` for the last one, and for a locked one. */
export function removeRouting(edit: EditNamed<'remove routing'>, reading: Reading): EditWrites {
  const routing = openRouting(reading, edit.routing);
  if (typeof routing === 'string') return routing;
  return reading.plan.routings.length > 1 ? [unseatThing(reading, 'routings', routing.id)] : 'nothing';
}
