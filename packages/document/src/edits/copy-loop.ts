import { type HoleId, LIMITS, type Relation, type Routing } from '@loopwright/model';
import type { Write } from '../cells.ts';
import { RELATION_WORDS } from '../reading/read-hole.ts';
import type { Reading } from '../reading/reading.ts';
import { copiedParts } from './copy-hole.ts';
import type { EditNamed, EditWrites } from './edit-named.ts';
import { newLoop } from './new-loop.ts';
import { writeOfHole } from './open-hole.ts';
import { openLoop } from './open-routing.ts';
import { placedIn } from './seat-hole.ts';

/**
 * Copies a loop with its holes, `by` beside it, after it in the list; no round plays it yet. Holes are copied as `copy
 * hole` does, and what is meant between two of them is meant between their copies. A hole that came into the loop
 * meanwhile has no name for its copy and is not copied.
 *
 * @returns `nothing` when the routing has as many loops or holes as it can, when an id was used before, or when a copy
 *   would leave the site plane
 * @throws RangeError if an id is none: the caller's bug
 */
export function copyLoop(edit: EditNamed<'copy loop'>, reading: Reading): EditWrites {
  const open = openLoop(reading, edit);
  if (typeof open === 'string') return open;
  const { routing, loop } = open;
  const named = edit.holes.filter(({ hole }) => loop.holes.includes(hole));
  const copies = new Map(named.map(({ hole, as }) => [hole, as]));
  if (new Set(copies.values()).size < named.length) return 'nothing';
  if (routing.holes.length + copies.size > LIMITS.holesPerRouting) return 'nothing';
  const made = newLoop(reading, routing, edit.as, loop.id);
  if (made === 'nothing') return 'nothing';
  const writes: Write[] = [...made];
  for (const { id: hole, key } of placedIn(routing, loop.holes)) {
    const as = copies.get(hole);
    if (as === undefined) continue;
    const parts = copiedParts(reading, routing, { hole, as }, edit.by);
    if (parts === undefined) return 'nothing';
    writes.push(...parts, ...relationsOfCopy(routing, hole, copies));
    writes.push(writeOfHole(routing.id, as, 'seat', { in: 'loop', loop: edit.as.id, key }));
  }
  return writes;
}

function relationsOfCopy(routing: Routing, hole: HoleId, copies: ReadonlyMap<HoleId, HoleId>): readonly Write[] {
  const relations: readonly Relation[] = routing.holes.find(({ id }) => id === hole)?.relations ?? [];
  return relations.flatMap(({ kind, hole: other }) => {
    const [as, to] = [copies.get(hole), copies.get(other)];
    return as && to ? [writeOfHole(routing.id, as, `relation:${RELATION_WORDS[kind]}:${to}`, true)] : [];
  });
}
