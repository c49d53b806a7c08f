/** A close the server means for good (4400–4499), or one worth another try (4500–4599). */
export interface CloseReason {
  readonly code: number;
  /** What the page tells the person: what happened, what is safe, what to do. */
  readonly words: string;
}

/**
 * Why the server closes a socket. 4400–4499: trying again cannot help; the page stops and says why.
 * Everything else is tried again with growing, jittered waits.
 */
export const CLOSE_CODES = {
  malformed: {
    code: 4400,
    words: 'The server could not read what this page sent. Nothing on the board was changed by it. Reload the page.',
  },
  'link-not-known': {
    code: 4401,
    words: 'This page has not entered the board, or its entry has run out. Open the board with its link again.',
  },
  'not-a-writer': {
    code: 4403,
    words:
      'This link may look at the board but not change it. What was changed here was not taken; it can be downloaded as a draft.',
  },
  'board-gone': { code: 4404, words: 'This board is no longer here. Ask the person who shared it.' },
  'edit-refused': {
    code: 4409,
    words:
      'The server did not take a change made here, so the board stays as it was without it. Download the draft, then reload.',
  },
  'link-revoked': {
    code: 4410,
    words: 'The link to this board was withdrawn. What was saved is safe on the board; ask for a new link to go on.',
  },
  'too-large': {
    code: 4413,
    words: 'A change made here is larger than a board can hold. It was not taken; it can be downloaded as a draft.',
  },
  'reload-needed': {
    code: 4426,
    words: 'The board has moved on to a newer version of this page. Everything saved is safe. Reload to go on.',
  },
  'too-many-messages': {
    code: 4429,
    words: 'This page sent far more than a person can. Everything saved is safe. Reload to go on.',
  },
  'slow-reader': {
    code: 4500,
    words: 'The connection is too slow to keep up just now. Changes are kept and sent as soon as it recovers.',
  },
  'server-stopping': { code: 4501, words: 'The server is restarting. Changes are kept and sent when it is back.' },
  'not-saved': {
    code: 4502,
    words: 'The server cannot save just now. Changes are kept here and sent again until they are saved.',
  },
  busy: { code: 4503, words: 'The server is full just now. Changes are kept and sent when there is room.' },
} as const satisfies Record<string, CloseReason>;

export type CloseName = keyof typeof CLOSE_CODES;

/** Whether the server meant a close for good: another try cannot help. */
export function isPermanentClose(code: number): boolean {
  return code >= 4400 && code <= 4499;
}

/** What to tell the person about a close; any code, known or not, has a sentence. */
export function closeWords(code: number): string {
  for (const reason of Object.values(CLOSE_CODES)) if (reason.code === code) return reason.words;
  return isPermanentClose(code)
    ? 'The server closed this board for a reason this page does not know. Everything saved is safe. Reload the page.'
    : 'The connection was lost. Changes are kept and sent when it is back.';
}
