import { isFields } from './fields.ts';
import { LIMITS } from './limits.ts';

/** What was left out or changed while a file was read, in sentences; beyond a limit they are only counted. */
export interface ReadingNotes {
  add(sentence: string): void;
  all(): readonly string[];
}

export function readingNotes(): ReadingNotes {
  const kept: string[] = [];
  let more = 0;
  return {
    add(sentence) {
      if (kept.length < LIMITS.notes) kept.push(sentence);
      else more += 1;
    },
    all: () => (more === 0 ? kept : [...kept, `${more} more notes of this kind.`]),
  };
}

/**
 * The parts of an untrusted value that did not come through: each named by its path, e.g. `green.outline`.
 *
 * Rounding to the millimetre is no loss; everything else that differs is one.
 *
 * Cost: O(size of the parsed value), since what has no counterpart is not looked into.
 */
export function lostParts(untrusted: unknown, parsed: unknown, path = ''): readonly string[] {
  if (parsed === undefined) return untrusted === undefined ? [] : [path];
  if (typeof untrusted === 'number' && typeof parsed === 'number')
    return Math.abs(untrusted - parsed) <= 0.000_5 ? [] : [path];
  if (Array.isArray(untrusted) && Array.isArray(parsed)) {
    const lost = parsed.flatMap((member, index) => lostParts(untrusted[index], member, `${path}[${index + 1}]`));
    return untrusted.length === parsed.length ? lost : [path];
  }
  if (isFields(untrusted) && isFields(parsed)) {
    const names = Object.keys(untrusted).slice(0, 100);
    return names.flatMap((name) =>
      lostParts(
        untrusted[name],
        Object.hasOwn(parsed, name) ? parsed[name] : undefined,
        path ? `${path}.${name}` : name,
      ),
    );
  }
  return Object.is(untrusted, parsed) || untrusted === undefined ? [] : [path];
}
