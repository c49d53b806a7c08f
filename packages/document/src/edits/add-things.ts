import type { Write } from '../cells.ts';
import type { Reading } from '../reading/reading.ts';
import type { EditWrites } from './edit-named.ts';
import { isFreeId } from './open-routing.ts';
import { keysAfterAll } from './order.ts';
import { seatKeyOf, seatThing } from './seat-thing.ts';
import type { ThingKind } from './thing-kinds.ts';

/**
 * Puts a new thing among its like: after the one named, or last.
 *
 * @returns `gone` when the one it should follow is not there any more; `nothing` when the board has as many as it can
 *   take, when the id was used before, or when the thing cannot be read
 */
export function addThing<T extends { readonly id: string }>(
  kind: ThingKind<T>,
  reading: Reading,
  thing: T,
  after: string | 'first' | 'last' = 'last',
): EditWrites {
  const others = kind.listed(reading.plan).map(({ id }) => id);
  const read = readable(kind, reading, thing);
  if (read === undefined || others.length >= kind.most) return 'nothing';
  const index = after === 'last' ? others.length - 1 : after === 'first' ? -1 : others.indexOf(after);
  if (after !== 'last' && after !== 'first' && index < 0) return 'gone';
  return [...seatThing(reading, kind.root, read.id, { others, index }), ...partWrites(kind, read)];
}

/**
 * Puts several new things last among their like, in their order: all of them, or `nothing` when one cannot be read, an
 * id was used before or comes twice, or there are more than the board can take.
 */
export function addThings<T extends { readonly id: string }>(
  kind: ThingKind<T>,
  reading: Reading,
  things: readonly T[],
): EditWrites {
  const others = kind.listed(reading.plan);
  if (others.length + things.length > kind.most) return 'nothing';
  if (new Set(things.map(({ id }) => id)).size < things.length) return 'nothing';
  const read = things.flatMap((thing) => readable(kind, reading, thing) ?? []);
  if (read.length < things.length) return 'nothing';
  const order = others.map(({ id }) => ({ id, key: seatKeyOf(reading, kind.root, id) }));
  const keys = keysAfterAll(order, read.length);
  return read.flatMap((thing, place) => [
    { root: kind.root, group: thing.id, part: 'seat', value: { in: 'plan', key: keys[place] } },
    ...partWrites(kind, thing),
  ]);
}

function readable<T extends { readonly id: string }>(kind: ThingKind<T>, reading: Reading, thing: T): T | undefined {
  const read = kind.parse(thing);
  return read && isFreeId(reading, kind.root, read.id) ? read : undefined;
}

function partWrites<T extends { readonly id: string }>(kind: ThingKind<T>, thing: T): readonly Write[] {
  return Object.entries(kind.parts(thing))
    .filter(([, value]) => value !== undefined)
    .map(([part, value]): Write => ({ root: kind.root, group: thing.id, part, value }));
}
