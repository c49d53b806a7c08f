import type { Reading } from '../reading/reading.ts';
import type { EditWrites } from './edit-named.ts';
import { seatThing } from './seat-thing.ts';
import type { ThingKind } from './thing-kinds.ts';

/**
 * Puts a thing after another of its kind, or first.
 *
 * @returns `gone` when either is not there any more; `nothing` when it is there already
 */
export function orderThing<T extends { readonly id: string }>(
  kind: ThingKind<T>,
  reading: Reading,
  id: string,
  after: string | 'first',
): EditWrites {
  const ids = kind.listed(reading.plan).map((thing) => thing.id);
  const now = ids.indexOf(id);
  if (now < 0 || (after !== 'first' && !ids.includes(after))) return 'gone';
  if (after === id || (ids[now - 1] ?? 'first') === after) return 'nothing';
  const others = ids.filter((other) => other !== id);
  const index = after === 'first' ? -1 : others.indexOf(after);
  return seatThing(reading, kind.root, id, { others, index });
}
