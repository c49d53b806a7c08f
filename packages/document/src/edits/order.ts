import { orderKeyAt } from '@loopwright/model';
import { generateKeyBetween, generateNKeysBetween } from 'fractional-indexing';

/** Something that has a place in an order. */
export interface Placed {
  readonly id: string;
  readonly key: string;
}

/** The key for what is put in, and new keys for those that had to make room. */
export interface Placing {
  readonly key: string;
  readonly rekeyed: readonly Placed[];
}

/** A key longer than this has been put between the same two too often: the whole order gets fresh, short keys. */
const LONGEST_KEY = 60;

/**
 * A key after the thing at `index` (−1 for the first place) of an order.
 *
 * Two people who put something in the same place at once make equal keys; a run of equal keys leaves no room in it, so
 * the run, and only the run, is rekeyed by whoever next puts something into it.
 *
 * @param order  by key, ties by id, without what is being put in
 */
export function placeAfter(order: readonly Placed[], index: number): Placing {
  const left = order[index];
  const right = order[index + 1];
  if (left === undefined || right === undefined || left.key < right.key) {
    const key = generateKeyBetween(left?.key ?? null, right?.key ?? null);
    return key.length <= LONGEST_KEY ? { key, rekeyed: [] } : placeAfresh(order, index);
  }
  return placeIntoRun(order, index, left.key);
}

function placeIntoRun(order: readonly Placed[], index: number, key: string): Placing {
  const first = order.findIndex((placed) => placed.key === key);
  let end = index + 1;
  while (order[end]?.key === key) end += 1;
  const run = order.slice(first, end);
  const keys = generateNKeysBetween(order[first - 1]?.key ?? null, order[end]?.key ?? null, run.length + 1);
  if (keys.some(({ length }) => length > LONGEST_KEY)) return placeAfresh(order, index);
  const at = index + 1 - first;
  return {
    key: keys[at] ?? key,
    rekeyed: run.map(({ id }, place) => ({ id, key: keys[place < at ? place : place + 1] ?? key })),
  };
}

function placeAfresh(order: readonly Placed[], index: number): Placing {
  return {
    key: orderKeyAt(index + 1),
    rekeyed: order.map(({ id }, place) => ({ id, key: orderKeyAt(place <= index ? place : place + 1) })),
  };
}

/** Keys for so many things that come after all of an order. */
export function keysAfterAll(order: readonly Placed[], count: number): readonly string[] {
  return generateNKeysBetween(order.at(-1)?.key ?? null, null, count);
}

/** A key for every place of an order, no two the same: only those in a run of equal keys get fresh ones. */
export function differentKeys(order: readonly Placed[]): readonly string[] {
  const keys: string[] = [];
  for (let first = 0; first < order.length; ) {
    const own = order[first]?.key ?? 'a0';
    let end = first + 1;
    while (order[end]?.key === own) end += 1;
    const isRun = end - first > 1 || own <= (keys.at(-1) ?? '');
    const fresh = () => generateNKeysBetween(keys.at(-1) ?? null, order[end]?.key ?? null, end - first);
    keys.push(...(isRun ? fresh() : [own]));
    first = end;
  }
  return keys.some(({ length }) => length > LONGEST_KEY) ? order.map((_, place) => orderKeyAt(place)) : keys;
}
