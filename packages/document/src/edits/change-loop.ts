import { isId, LIMITS, parseName } from '@loopwright/model';
import type { Write } from '../cells.ts';
import type { Reading } from '../reading/reading.ts';
import type { EditNamed, EditWrites } from './edit-named.ts';
import { openLoop } from './open-routing.ts';

/** Gives a loop another name or base; `null` takes the base away. An empty name changes nothing. */
export function changeLoop(edit: EditNamed<'change loop'>, reading: Reading): EditWrites {
  const open = openLoop(reading, edit);
  if (typeof open === 'string') return open;
  const group = `${open.routing.id}/${open.loop.id}`;
  const name = parseName(edit.to.name, LIMITS.name);
  const { base } = edit.to;
  const writes: Write[] = [];
  if (name !== undefined) writes.push({ root: 'loops', group, part: 'name', value: name });
  if (base === null || isId(base)) writes.push({ root: 'loops', group, part: 'base', value: base });
  return writes;
}
