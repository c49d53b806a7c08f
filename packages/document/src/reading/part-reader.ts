import type { Parts } from '../cells.ts';

/** One thing as it was read: its value, its place in a list, and the parts that could not be read. */
export interface Read<T> {
  /** Absent when the thing is not there, was removed, or lacks what it cannot be without. */
  readonly value: T | undefined;
  /** Key of its place among its like; ties go by id. */
  readonly order: string;
  readonly unread: readonly string[];
}

export interface PartReader {
  /** A part's parsed value; `undefined` when nothing is decided, or when it cannot be read, which is noted. */
  take<T>(part: string, parse: (value: unknown) => T | undefined): T | undefined;
  /** The parts whose names begin so, in the order of their names, with the rest of the name. */
  startingWith(prefix: string): readonly { readonly part: string; readonly rest: string }[];
  note(part: string): void;
  unread(): readonly string[];
}

/** Reads the parts of one group, noting what cannot be read. */
export function partReader(parts: Parts): PartReader {
  const unread: string[] = [];
  return {
    take(part, parse) {
      const value = parts.get(part);
      if (value === undefined || value === null) return undefined;
      const parsed = parse(value);
      if (parsed === undefined) unread.push(part);
      return parsed;
    },
    startingWith(prefix) {
      return [...parts.keys()]
        .filter((part) => part.startsWith(prefix))
        .sort()
        .map((part) => ({ part, rest: part.slice(prefix.length) }));
    },
    note: (part) => {
      unread.push(part);
    },
    unread: () => unread,
  };
}
