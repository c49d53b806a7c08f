import { errorAnswer, HTTP_ERRORS, type HttpErrorCode } from '@loopwright/protocol';
import type { FastifyReply } from 'fastify';
import type { NoEntry } from '../access/access.ts';

/** Refuses a request by a documented code. `words` says more than the code can, e.g. why a file is no plan. */
export function refuse(reply: FastifyReply, code: HttpErrorCode, words?: string): FastifyReply {
  return reply
    .code(HTTP_ERRORS[code].status)
    .header('cache-control', 'no-store')
    .send(words === undefined ? errorAnswer(code) : { ...errorAnswer(code), words });
}

/** The code for somebody who is not let in. A stranger is not told whether the board exists. */
export const NO_ENTRY: Readonly<Record<NoEntry, HttpErrorCode>> = {
  'no-such-board': 'link-not-known',
  'wrong-link': 'link-not-known',
  'link-revoked': 'link-revoked',
  'link-ended': 'link-revoked',
};
