import { type Entered, enterBoard } from '../live/board-api.ts';
import { openKeptEntries, shortDigest } from './kept-entry.ts';

/**
 * Enters a board; without a server as it was last entered by this link, so that what this machine keeps of it opens.
 *
 * The server's own no always holds: a link that it refused opens nothing any more, with or without a network.
 */
export async function enterKept(board: string, secret: string, name: string): Promise<Entered> {
  const entries = openKeptEntries(window.localStorage, shortDigest);
  const kept = await entries.find(board, secret);
  const entered = await enterBoard(board, secret, name, kept ? 'not long' : 'as long as it takes');
  if (entered.kind === 'entered') await entries.keep(secret, entered.answer);
  if (entered.kind === 'entered' || !kept) return entered;
  if (entered.kind === 'no answer' || !entered.forGood) return { kind: 'entered', answer: kept };
  await entries.forget(board, secret);
  return entered;
}
