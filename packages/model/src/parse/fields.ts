/** An untrusted object, to be read by name. */
export type Fields = Readonly<Record<string, unknown>>;

/** Whether an untrusted value is an object with named fields: not null, not a list. */
export function isFields(value: unknown): value is Fields {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** Whether an untrusted value is a list of at most `most` things. */
export function isList(value: unknown, most: number): value is readonly unknown[] {
  return Array.isArray(value) && value.length <= most;
}

/**
 * A list whose every member can be read.
 *
 * @returns undefined when it is no list, too long, or any member is unreadable: half an outline is another outline
 */
export function parseEach<T>(
  value: unknown,
  most: number,
  parse: (member: unknown) => T | undefined,
): readonly T[] | undefined {
  if (!isList(value, most)) return undefined;
  const members: T[] = [];
  for (const member of value) {
    const parsed = parse(member);
    if (parsed === undefined) return undefined;
    members.push(parsed);
  }
  return members;
}

/** The members of a list that can be read, at most `most`; the rest are left out. No list is an empty one. */
export function parseSome<T>(value: unknown, most: number, parse: (member: unknown) => T | undefined): readonly T[] {
  if (!Array.isArray(value)) return [];
  const members: T[] = [];
  for (const member of value) {
    if (members.length === most) break;
    const parsed = parse(member);
    if (parsed !== undefined) members.push(parsed);
  }
  return members;
}

/** One of a fixed list of words. */
export function parseWord<Word extends string>(value: unknown, words: readonly Word[]): Word | undefined {
  return words.find((word) => word === value);
}
