import type { Reading } from '../reading/reading.ts';
import type { EditNamed, EditWrites } from './edit-named.ts';
import { newLoop } from './new-loop.ts';
import { openRouting } from './open-routing.ts';

/** Adds a loop without holes. No round plays it yet. `nothing` when the routing has as many as it can. */
export function addLoop(edit: EditNamed<'add loop'>, reading: Reading): EditWrites {
  const routing = openRouting(reading, edit.routing);
  return typeof routing === 'string' ? routing : newLoop(reading, routing, edit.loop, edit.after);
}
