import { LIMITS } from '@loopwright/model';
import type { Reading } from '../reading/reading.ts';
import type { EditNamed, EditWrites } from './edit-named.ts';
import { openHole } from './open-hole.ts';

/** Pins a part of a hole, or lets it go: a pinned part stays put in every search and asks before it is dragged. */
export function pin(edit: EditNamed<'pin' | 'unpin'>, reading: Reading): EditWrites {
  const open = openHole(reading, edit);
  if (typeof open === 'string') return open;
  const isPinned = open.hole.pinned.includes(edit.part);
  const shallBe = edit.edit === 'pin';
  if (isPinned === shallBe || (shallBe && open.hole.pinned.length >= LIMITS.pinnedPerHole)) return 'nothing';
  return [open.write(`pin:${edit.part}`, shallBe)];
}
