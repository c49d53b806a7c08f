/** Why an update was refused whole. Sent in a `refused` frame just before the socket is closed for good. */
export const REFUSALS = {
  'not-a-writer': 'The connection may read the room but not write to it.',
  malformed:
    'The bytes are not an update, or hold something that is never sent: subdocuments, nested types, gaps of nothing.',
  'too-large': 'The update, one of its values, or the document with it is larger than the limit.',
  'unknown-root': 'It writes to a collection that the room does not have.',
  'bad-key': 'A key does not follow the grammar of its collection, or a key was deleted.',
  'bad-value': 'A value is not plain JSON: not finite, too deep, bytes, or an object of some other kind.',
} as const;

export type RefusalCode = keyof typeof REFUSALS;

export const REFUSAL_CODES: readonly RefusalCode[] = [
  'not-a-writer',
  'malformed',
  'too-large',
  'unknown-root',
  'bad-key',
  'bad-value',
];

/** Whether an untrusted word is a refusal's code. */
export function isRefusalCode(word: string): word is RefusalCode {
  return Object.hasOwn(REFUSALS, word);
}
