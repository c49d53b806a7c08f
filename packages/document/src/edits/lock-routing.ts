import type { Reading } from '../reading/reading.ts';
import type { EditNamed, EditWrites } from './edit-named.ts';
import { routingOf } from './open-hole.ts';

/** Locks a routing, such as the existing course, so that no other edit changes it; or unlocks it. */
export function lockRouting(edit: EditNamed<'lock routing' | 'unlock routing'>, reading: Reading): EditWrites {
  const routing = routingOf(reading, edit.routing);
  if (!routing) return 'gone';
  const locked = edit.edit === 'lock routing';
  return routing.locked === locked
    ? 'nothing'
    : [{ root: 'routings', group: routing.id, part: 'locked', value: locked }];
}
