import { valueAt, type Write, writtenKey } from '../cells.ts';
import { isSameValue } from '../plain-value.ts';
import { layOver, type Reading } from '../reading/reading.ts';
import type { EditNamed, EditWrites } from './edit-named.ts';
import type { NamedEdit } from './named-edit.ts';

/** Edits that one step may hold: every hole of a full routing, and then some. */
const MOST_TOGETHER = 500;

/**
 * Several edits as one step, each done on what the one before left. Those whose thing was removed meanwhile, or that
 * change nothing, are left out: taking out three holes takes out the two that are still there.
 *
 * @param writesFor  what one edit would write
 * @returns `gone` when all of them are gone; `nothing` when none changes anything, when there are too many, or when one
 *   of them is itself several or a whole plan
 */
export function several(
  { edits }: EditNamed<'several'>,
  reading: Reading,
  writesFor: (edit: NamedEdit, reading: Reading) => EditWrites,
): EditWrites {
  if (edits.length === 0 || edits.length > MOST_TOGETHER) return 'nothing';
  if (edits.some(({ edit }) => edit === 'several' || edit === 'lay out plan')) return 'nothing';
  const last = new Map<string, Write>();
  let now = reading;
  let gone = 0;
  for (const edit of edits) {
    const writes = writesFor(edit, now);
    if (writes === 'gone') gone += 1;
    if (typeof writes === 'string') continue;
    for (const write of writes) last.set(`${write.root} ${writtenKey(write)}`, write);
    now = layOver(now, writes);
  }
  if (gone === edits.length) return 'gone';
  return [...last.values()].filter((write) => !isSameValue(valueAt(reading.cells, write), write.value));
}
