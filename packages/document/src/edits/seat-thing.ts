import type { Write } from '../cells.ts';
import type { Reading } from '../reading/reading.ts';
import type { Root } from '../roots.ts';
import { placeAfter } from './order.ts';

/** Things that have a seat among their like: all but holes, whose seats say more. */
export type SeatedRoot = Exclude<Root, 'site' | 'holes' | 'settings' | 'dispositions'>;

/** The key of a thing's seat; things without a readable one come first. */
export function seatKeyOf(reading: Reading, root: SeatedRoot, group: string): string {
  return reading.read[root].get(group)?.order || 'a0';
}

/**
 * Seats a thing among its like, after the one at `index` of the others (−1: first).
 *
 * @param others  the groups of its like in their order, without its own
 */
export function seatThing(
  reading: Reading,
  root: SeatedRoot,
  group: string,
  { others, index }: { readonly others: readonly string[]; readonly index: number },
): readonly Write[] {
  const order = others.map((other) => ({ id: other, key: seatKeyOf(reading, root, other) }));
  const { key, rekeyed } = placeAfter(order, index);
  return [{ id: group, key }, ...rekeyed].map((placed): Write => {
    return { root, group: placed.id, part: 'seat', value: { in: 'plan', key: placed.key } };
  });
}

/** Takes a thing away. Only its seat says so: everything about it is kept, and undo brings it back. */
export function unseatThing(reading: Reading, root: SeatedRoot, group: string): Write {
  return { root, group, part: 'seat', value: { in: 'removed', key: seatKeyOf(reading, root, group) } };
}
