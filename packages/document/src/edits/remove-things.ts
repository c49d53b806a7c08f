import type { Reading } from '../reading/reading.ts';
import type { EditWrites } from './edit-named.ts';
import { unseatThing } from './seat-thing.ts';
import type { ThingKind } from './thing-kinds.ts';

/**
 * Takes things away: those of them that are still there. Only their seats say so, and what speaks of them (a loop of its
 * base, a tee of its set, a decision of a finding about it) stays as it is: undo brings all of it back as it was.
 *
 * @returns `gone` when none of them is there any more
 */
export function removeThings<T extends { readonly id: string }>(
  kind: ThingKind<T>,
  reading: Reading,
  ids: readonly string[],
): EditWrites {
  const named = new Set(ids);
  const there = kind.listed(reading.plan).filter(({ id }) => named.has(id));
  return there.length > 0 ? there.map(({ id }) => unseatThing(reading, kind.root, id)) : 'gone';
}

/** As `removeThings`, but one of its kind always stays: `nothing` for the last. */
export function removeAllButLast<T extends { readonly id: string }>(
  kind: ThingKind<T>,
  reading: Reading,
  id: string,
): EditWrites {
  const listed = kind.listed(reading.plan);
  const isLast = listed.length === 1 && listed[0]?.id === id;
  return isLast ? 'nothing' : removeThings(kind, reading, [id]);
}
