import type { Reading } from '../reading/reading.ts';
import type { EditNamed, EditWrites } from './edit-named.ts';
import { openRouting } from './open-routing.ts';
import { unseatThing } from './seat-thing.ts';

/** Takes a round away; its loops and holes stay. `nothing` for the last one: a course is played in some round. */
export function removeRound(edit: EditNamed<'remove round'>, reading: Reading): EditWrites {
  const routing = openRouting(reading, edit.routing);
  if (typeof routing === 'string') return routing;
  if (!routing.rounds.some(({ id }) => id === edit.round)) return 'gone';
  return routing.rounds.length > 1 ? [unseatThing(reading, 'rounds', `${routing.id}/${edit.round}`)] : 'nothing';
}
