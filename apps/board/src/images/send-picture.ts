import { HTTP_ERRORS, parseBlobAnswer, saysHeld } from '@loopwright/protocol';
import { wordsOf } from '../live/board-api.ts';
import type { ReadyPicture } from './reader/contract.ts';

/** What came of sending; `undefined` when it was called off. */
export type Sent =
  | { readonly kind: 'kept'; readonly hash: string }
  | { readonly kind: 'refused'; readonly why: string }
  | undefined;

export interface Sending {
  readonly picture: ReadyPicture;
  /** Where the board keeps its images, with a slash at the end. */
  readonly address: string;
  /** Bytes that are gone, of all. */
  readonly onProgress: (sent: number, all: number) => void;
  readonly signal: AbortSignal;
}

const NO_ANSWER = 'The server did not answer: the picture is still here. Check the connection and try again.';
const NOT_UNDERSTOOD = 'The server answered something this page does not understand. Reload the page.';

/** Sends a picture to the board, unless the board has it already. */
export async function sendPicture(sending: Sending): Promise<Sent> {
  const { picture, address, signal } = sending;
  if (picture.hash !== undefined && (await isHeld(address, picture.hash, signal)))
    return { kind: 'kept', hash: picture.hash };
  return signal.aborted ? undefined : post(sending);
}

async function isHeld(address: string, hash: string, signal: AbortSignal): Promise<boolean> {
  try {
    return saysHeld(await (await fetch(`${address}${hash}/held`, { credentials: 'same-origin', signal })).json());
  } catch {
    return false; // no answer: sending it says why
  }
}

/** By the older kind of request: it alone tells how much is gone. */
function post({ picture, address, onProgress, signal }: Sending): Promise<Sent> {
  return new Promise((settle) => {
    const request = new XMLHttpRequest();
    request.open('POST', address.replace(/\/$/, ''));
    request.setRequestHeader('content-type', picture.type);
    request.upload.onprogress = ({ loaded, total }) => onProgress(loaded, total);
    request.onload = () => settle(answerOf(request.status, request.responseText));
    request.onerror = () => settle({ kind: 'refused', why: NO_ANSWER });
    request.ontimeout = request.onerror;
    request.onabort = () => settle(undefined);
    signal.addEventListener('abort', () => request.abort(), { once: true });
    request.send(picture.file);
  });
}

/** What the server's answer to a picture means. */
export function answerOf(status: number, text: string): Sent {
  const body = jsonOf(text);
  if (status === 413 && body === undefined) return { kind: 'refused', why: HTTP_ERRORS['too-large'].words }; // a proxy's
  if (status < 200 || status > 299) return { kind: 'refused', why: wordsOf(body) };
  const answer = parseBlobAnswer(body);
  return answer ? { kind: 'kept', hash: answer.hash } : { kind: 'refused', why: NOT_UNDERSTOOD };
}

function jsonOf(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined; // not JSON: a proxy's page, say
  }
}
