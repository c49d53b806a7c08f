import { frozen } from '../plain-value.ts';
import type { Read } from './part-reader.ts';

/** What was read of one collection, in its order, ties by id; at most so many, the rest stay unshown on every page alike. */
export function inOrder<T>(groups: ReadonlyMap<string, Read<T>>, most: number): readonly T[] {
  const there: { readonly id: string; readonly order: string; readonly value: T }[] = [];
  for (const [id, { value, order }] of groups) if (value !== undefined) there.push({ id, order, value });
  there.sort((a, b) => (a.order === b.order ? (a.id < b.id ? -1 : 1) : a.order < b.order ? -1 : 1));
  return frozen(there.slice(0, most).map(({ value }) => value));
}

/** The old list if it holds the very same things in the same order. */
export function keepList<T>(before: readonly T[], after: readonly T[]): readonly T[] {
  return before.length === after.length && before.every((value, index) => value === after[index]) ? before : after;
}

interface Named {
  readonly id: string;
}

/** Whether two lists hold things of the same names in the same order. */
export function isSameIds(now: readonly Named[], old: readonly Named[]): boolean {
  return now === old || (now.length === old.length && now.every(({ id }, place) => id === old[place]?.id));
}
