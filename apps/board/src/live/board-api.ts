import type { Plan } from '@loopwright/model';
import { type EnterAnswer, parseCreateBoardAnswer, parseEnterAnswer } from '@loopwright/protocol';

/** What came of knocking at a board's door. */
export type Entered =
  | { readonly kind: 'entered'; readonly answer: EnterAnswer }
  /** `forGood`: the link opens this board no more; else it may be tried again. */
  | { readonly kind: 'refused'; readonly why: string; readonly forGood: boolean }
  /** No server: what this machine keeps of the board may still be opened. */
  | { readonly kind: 'no answer' };

/** What came of asking for a board, in words where it is a no. */
export type Created =
  | { readonly kind: 'created'; readonly link: string }
  | { readonly kind: 'refused'; readonly why: string };

const NO_ANSWER = 'The server did not answer. Nothing was lost; check the connection and try again.';
const NOT_UNDERSTOOD = 'The server answered something this page does not understand. Reload the page.';

/** Not let in, not there, gone; not: busy, too often, a proxy without a server behind it. */
const FOR_GOOD: ReadonlySet<number> = new Set([401, 403, 404, 410]);

/** Milliseconds a server is waited for where the board could be opened without it. */
const PATIENCE = 5000;

async function post(address: string, body: unknown, patience?: number): Promise<Response | undefined> {
  try {
    return await fetch(address, {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      credentials: 'same-origin',
      body: JSON.stringify(body),
      ...(patience === undefined ? {} : { signal: AbortSignal.timeout(patience) }),
    });
  } catch {
    return undefined; // no network or no server: the caller says so
  }
}

/** Exchanges the secret of a link for a cookie. The secret is in the body, never in an address. */
export async function enterBoard(
  board: string,
  secret: string,
  name: string,
  patience: 'as long as it takes' | 'not long',
): Promise<Entered> {
  const most = patience === 'not long' ? PATIENCE : undefined;
  const response = await post(`/api/boards/${encodeURIComponent(board)}/enter`, { secret, name }, most);
  if (!response) return { kind: 'no answer' };
  const body = await bodyOf(response);
  if (!response.ok) return { kind: 'refused', why: wordsOf(body), forGood: FOR_GOOD.has(response.status) };
  const answer = parseEnterAnswer(body);
  return answer ? { kind: 'entered', answer } : { kind: 'refused', why: NOT_UNDERSTOOD, forGood: false };
}

/** Makes a board, empty or holding a plan. */
export async function createBoard(request: { readonly name?: string; readonly plan?: Plan }): Promise<Created> {
  const response = await post('/api/boards', request);
  if (!response) return { kind: 'refused', why: NO_ANSWER };
  const body = await bodyOf(response);
  if (!response.ok) return { kind: 'refused', why: wordsOf(body) };
  const answer = parseCreateBoardAnswer(body);
  return answer ? { kind: 'created', link: answer.link } : { kind: 'refused', why: NOT_UNDERSTOOD };
}

async function bodyOf(response: Response): Promise<unknown> {
  try {
    return await response.json();
  } catch {
    return undefined; // not JSON: a proxy's page, say
  }
}

/** The server's own sentence about a refusal, when it gave one. */
export function wordsOf(body: unknown): string {
  if (typeof body !== 'object' || body === null || !('words' in body)) return NOT_UNDERSTOOD;
  return typeof body.words === 'string' ? body.words : NOT_UNDERSTOOD;
}
