/** An error answer over HTTP: `{ "error": code, "words": … }`. */
export interface HttpError {
  readonly status: number;
  /** One sentence: what happened and what to do. */
  readonly words: string;
}

/** Every error the HTTP interface answers with. */
export const HTTP_ERRORS = {
  'bad-request': { status: 400, words: 'The request could not be read. Nothing was changed.' },
  'not-a-plan': { status: 400, words: 'The file is not a board file. Nothing was changed.' },
  'not-an-image': { status: 400, words: 'The file is not an image this board can show: PNG, JPEG or WebP.' },
  'not-entered': { status: 401, words: 'Open the board with its link first.' },
  'link-not-known': { status: 403, words: 'This link opens no board. Check that it was copied whole.' },
  'link-revoked': { status: 403, words: 'This link was withdrawn. Ask for a new one.' },
  'wrong-origin': { status: 403, words: 'The request came from a page of another site and was not followed.' },
  'not-allowed': { status: 403, words: 'This link may not do that on the board.' },
  'not-found': { status: 404, words: 'There is nothing at this address.' },
  'too-large': { status: 413, words: 'That is larger than the server takes. Nothing was changed.' },
  'too-many-requests': { status: 429, words: 'Too many requests in a short time. Wait a minute and try again.' },
  'not-saved': { status: 503, words: 'The server could not save it. Nothing was changed; try again.' },
  busy: { status: 503, words: 'The server is busy. Nothing was changed; try again.' },
  internal: { status: 500, words: 'Something went wrong on the server and was reported. Nothing was changed.' },
} as const satisfies Record<string, HttpError>;

export type HttpErrorCode = keyof typeof HTTP_ERRORS;

export interface ErrorAnswer {
  readonly error: HttpErrorCode;
  readonly words: string;
}

/** The body of an error answer. */
export function errorAnswer(code: HttpErrorCode): ErrorAnswer {
  return { error: code, words: HTTP_ERRORS[code].words };
}
