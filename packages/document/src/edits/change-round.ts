import { LIMITS, parseName } from '@loopwright/model';
import type { Write } from '../cells.ts';
import type { Reading } from '../reading/reading.ts';
import type { EditNamed, EditWrites } from './edit-named.ts';
import { playable } from './new-round.ts';
import { openRouting } from './open-routing.ts';

/** Gives a round another name or other loops. An empty name, and loops of which none is there, change nothing. */
export function changeRound(edit: EditNamed<'change round'>, reading: Reading): EditWrites {
  const routing = openRouting(reading, edit.routing);
  if (typeof routing === 'string') return routing;
  if (!routing.rounds.some(({ id }) => id === edit.round)) return 'gone';
  const group = `${routing.id}/${edit.round}`;
  const name = parseName(edit.to.name, LIMITS.name);
  const loops = playable(edit.to.loops ?? [], new Set(routing.loops.map(({ id }) => id)));
  const writes: Write[] = [];
  if (name !== undefined) writes.push({ root: 'rounds', group, part: 'name', value: name });
  if (loops.length > 0) writes.push({ root: 'rounds', group, part: 'loops', value: loops });
  return writes;
}
