/** Lone halves of a character pair: JSON's canonical form has no place for them. */
const LONE_SURROGATE = /\p{Surrogate}/gu;
/** Control and line-separator characters, and those that turn the direction of the text that follows. */
const INVISIBLE = /[\p{Cc}\u2028\u2029\u202a-\u202e\u2066-\u2069\ufeff]+/gu;

/** More marks on one letter than any script writes: they would grow over the lines above and below. */
const PILED = /(\p{M}{8})\p{M}+/gu;
/** Joins what follows to what stands before it: at the end it joins nothing. */
const HANGING_JOINER = /\u200d+$/;
/** Anything that can be seen: letters, figures, signs; not spaces, joiners, fillers and marks alone. */
const SEEN = /[^\p{Z}\p{C}\p{M}\u115f\u1160\u2800\u3164\uffa0]/u;

function cut(text: string, most: number): string {
  if (!SEEN.test(text)) return '';
  const characters = [...text.replace(PILED, '$1')];
  return characters.length <= most
    ? characters.join('')
    : characters.slice(0, most).join('').trimEnd().replace(HANGING_JOINER, '');
}

/** Only a little more than can be kept is looked at, so that a huge text costs nothing. */
const worthReading = (value: string, most: number) => value.slice(0, most * 4 + 16);

/**
 * One line of plain text, as people typed it: control characters become a space, the ends are trimmed, and what is
 * longer than `most` characters is cut. What nobody could see is no text. Markup stays the plain characters it is; views never read it as markup.
 *
 * @returns undefined when it is no text; an empty text is a text
 */
export function parseText(value: unknown, most: number): string | undefined {
  if (typeof value !== 'string') return undefined;
  const line = worthReading(value, most).replace(INVISIBLE, ' ').replace(LONE_SURROGATE, '\ufffd').trim();
  return cut(line, most);
}

/** Plain text of several lines: as `parseText`, but line breaks stay. */
export function parseLines(value: unknown, most: number): string | undefined {
  if (typeof value !== 'string') return undefined;
  const lines = worthReading(value, most)
    .replace(/\r\n?/g, '\n')
    .replace(INVISIBLE, (run) => (run.includes('\n') ? run.replace(/[^\n]+/g, '') : ' '))
    .replace(LONE_SURROGATE, '\ufffd')
    .trim();
  return cut(lines, most);
}

/** A text worth keeping: undefined when it is no text or nothing is left of it. */
export function parseName(value: unknown, most: number): string | undefined {
  const text = parseText(value, most);
  return text === '' ? undefined : text;
}
