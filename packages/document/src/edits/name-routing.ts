import { LIMITS, parseName } from '@loopwright/model';
import type { Reading } from '../reading/reading.ts';
import type { EditNamed, EditWrites } from './edit-named.ts';
import { openRouting } from './open-routing.ts';

/** Gives a routing another name. `nothing` for an empty one: a routing is spoken of by its name. */
export function nameRouting(edit: EditNamed<'name routing'>, reading: Reading): EditWrites {
  const routing = openRouting(reading, edit.routing);
  if (typeof routing === 'string') return routing;
  const name = parseName(edit.name, LIMITS.name);
  if (name === undefined) return 'nothing';
  return [{ root: 'routings', group: routing.id, part: 'name', value: name }];
}
