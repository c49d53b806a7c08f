import { isFields } from './fields.ts';
import { lostParts, type ReadingNotes } from './reading-notes.ts';
import { parseText } from './text.ts';

interface ListWords {
  /** What one of them is called, e.g. 'Hole'. */
  readonly one: string;
  /** Several of them, where an s at the end does not say it. */
  readonly many?: string;
  readonly most: number;
}

/**
 * A list of things that have ids. Members that cannot be read are left out with a note, parts of members too, and an id
 * that was used before gets a number at its end, so that neither thing is lost.
 */
export function parseNamedList<T extends { readonly id: string }>(
  value: unknown,
  words: ListWords,
  parse: (member: unknown) => T | undefined,
  notes: ReadingNotes,
): readonly T[] {
  if (value === undefined) return [];
  const many = words.many ?? `${words.one.toLowerCase()}s`;
  if (!Array.isArray(value)) {
    notes.add(`The list of ${many} could not be read and was left out.`);
    return [];
  }
  const taken = new Set<string>();
  const members: T[] = [];
  for (const [index, member] of value.slice(0, words.most).entries()) {
    const parsed = parse(member);
    if (parsed === undefined) {
      notes.add(`${nameOf(words.one, member, index)} could not be read and was left out.`);
      continue;
    }
    const lost = lostParts(member, parsed);
    if (lost.length > 0)
      notes.add(`${nameOf(words.one, member, index)}: ${listed(lost)} could not be read as written.`);
    const id = freeId(parsed.id, taken);
    if (id !== parsed.id) notes.add(`${words.one} '${parsed.id}' is there twice; the later one is now '${id}'.`);
    taken.add(id);
    members.push(id === parsed.id ? parsed : { ...parsed, id });
  }
  if (value.length > words.most) notes.add(`Only the first ${words.most} of ${value.length} ${many} were taken in.`);
  return members;
}

function nameOf(one: string, member: unknown, index: number): string {
  const id = isFields(member) ? parseText(member.id, 40) : undefined;
  return id ? `${one} '${id}'` : `${one} number ${index + 1} of the list`;
}

function listed(paths: readonly string[]): string {
  const shown = paths.slice(0, 4).map((path) => parseText(path, 60) ?? '');
  return paths.length > 4 ? `${shown.join(', ')} and ${paths.length - 4} more` : shown.join(', ');
}

function freeId(id: string, taken: ReadonlySet<string>): string {
  if (!taken.has(id)) return id;
  let count = 2;
  while (taken.has(`${id.slice(0, 34)}-${count}`)) count += 1;
  return `${id.slice(0, 34)}-${count}`;
}
