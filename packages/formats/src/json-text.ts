/** Bytes of the largest file taken in. The page checks a file's size before it reads it. */
export const LARGEST_COURSE_FILE = 50_000_000;

export type JsonText =
  | { readonly kind: 'value'; readonly value: unknown }
  /** One sentence: what is wrong and what to do. */
  | { readonly kind: 'unreadable'; readonly why: string };

/** What somebody may have meant to bring, for the sentences about what they brought instead. */
export interface Wanted {
  /** e.g. 'a board file or a GeoJSON course'. */
  readonly file: string;
  /** e.g. 'the course'. */
  readonly exported: string;
  /** What a file that is too large is cut to. */
  readonly cutTo: string;
}

/** A whole course, to make a board of. */
export const A_COURSE: Wanted = {
  file: 'a board file or a GeoJSON course',
  exported: 'the course',
  cutTo: 'the course and its surroundings',
};

/** The sentence for a file that is too large, by its size in bytes: to be said before it is read. */
export function tooLargeSentence(bytes: number, { cutTo }: Wanted = A_COURSE): string {
  const megabytes = (size: number) => `${Math.round(size / 1_000_000)} MB`;
  return `This file has ${megabytes(bytes)}, and ${megabytes(LARGEST_COURSE_FILE)} is the most that can be read: cut it to ${cutTo}.`;
}

/**
 * The value of a JSON text, or one sentence about why there is none. Never throws.
 *
 * Cost: one pass by the engine's own parser; a text that is too long is not looked at.
 */
export function readJsonText(text: string, wanted: Wanted = A_COURSE): JsonText {
  if (text.length > LARGEST_COURSE_FILE) return { kind: 'unreadable', why: tooLargeSentence(text.length, wanted) };
  const start = text
    .slice(0, 2_000)
    .replace(/^\ufeff/, '')
    .trimStart();
  if (start === '' && text.trim() === '')
    return { kind: 'unreadable', why: 'This file is empty: fetch or export it again.' };
  if (start.startsWith('<'))
    return {
      kind: 'unreadable',
      why: `This file holds XML or a web page, not JSON: export ${wanted.exported} as GeoJSON and drop that.`,
    };
  if (!/^[[{]/.test(start)) return { kind: 'unreadable', why: `This file is not JSON: drop ${wanted.file}.` };
  try {
    const value: unknown = JSON.parse(text.replace(/^\ufeff/, ''));
    return { kind: 'value', value };
  } catch {
    return { kind: 'unreadable', why: whyNotJson(text) };
  }
}

/** A text whose brackets never close was most likely cut off. */
function whyNotJson(text: string): string {
  const end = text.slice(-2_000).trimEnd();
  return /[}\]]$/.test(end)
    ? 'This file is not valid JSON: export it again, or check what was changed in it by hand.'
    : 'This file ends in the middle, as if it was cut off on the way: fetch or export it again.';
}
