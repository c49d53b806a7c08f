import { CLOSE_CODES } from '@loopwright/protocol';

/** What a close code the server means for good says to the person. */
export function closedWords(code: number): string {
  const reason = Object.values(CLOSE_CODES).find((each) => each.code === code);
  return reason?.words ?? `The server closed this board (${code}). Reload the page; what was saved is safe.`;
}
