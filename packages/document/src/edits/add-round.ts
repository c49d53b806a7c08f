import { LIMITS } from '@loopwright/model';
import type { Reading } from '../reading/reading.ts';
import type { EditNamed, EditWrites } from './edit-named.ts';
import { frameOfRound, playable } from './new-round.ts';
import { groupsIn, isFreeId, openRouting } from './open-routing.ts';
import { seatThing } from './seat-thing.ts';

/**
 * Adds a round, such as A + B, after another, or first; last when that one is not there any more.
 *
 * @returns `nothing` when the routing has as many rounds as it can or had one of that id, or when none of its loops is there
 * @throws RangeError if the id is none: the caller's bug
 */
export function addRound(edit: EditNamed<'add round'>, reading: Reading): EditWrites {
  const routing = openRouting(reading, edit.routing);
  if (typeof routing === 'string') return routing;
  const group = `${routing.id}/${edit.round.id}`;
  const { rounds } = routing;
  const known = new Set(routing.loops.map(({ id }) => id));
  if (rounds.length >= LIMITS.roundsPerRouting || !isFreeId(reading, 'rounds', group)) return 'nothing';
  if (playable(edit.round.loops, known).length === 0) return 'nothing';
  const others = groupsIn(routing.id, rounds);
  const at = rounds.findIndex(({ id }) => id === edit.after);
  const index = edit.after === 'first' ? -1 : at < 0 ? others.length - 1 : at;
  return [...frameOfRound(group, edit.round, known), ...seatThing(reading, 'rounds', group, { others, index })];
}
