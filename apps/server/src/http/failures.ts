import type { HttpErrorCode } from '@loopwright/protocol';
import type { FastifyInstance } from 'fastify';
import { type Log, reasonOf } from '../log.ts';
import { refuse } from './problem.ts';

/** The framework's and the disk's own codes, as ours. */
const KNOWN: readonly (readonly [RegExp, HttpErrorCode])[] = [
  [/^FST_ERR_CTP_BODY_TOO_LARGE$/, 'too-large'],
  [/^FST_ERR_CTP_/, 'bad-request'],
  [/^(SQLITE_|ENOSPC|EIO|EROFS|EDQUOT)/, 'not-saved'],
];

function codeOf(failure: unknown): HttpErrorCode {
  if (!(failure instanceof Error)) return 'internal';
  const own = 'code' in failure && typeof failure.code === 'string' ? failure.code : '';
  const known = KNOWN.find(([pattern]) => pattern.test(own));
  if (known) return known[1];
  const status = 'statusCode' in failure ? failure.statusCode : undefined;
  if (status === 429) return 'too-many-requests';
  if (status === 403 || status === 404) return 'not-found'; // a path that leads out of the page's directory
  return status === 400 ? 'bad-request' : 'internal';
}

/** The one place where failures become answers: no stack trace leaves the server, and none is lost. */
export function answerFailures(app: FastifyInstance, log: Log): void {
  app.setErrorHandler((failure, request, reply) => {
    const code = codeOf(failure);
    if (code === 'internal' || code === 'not-saved')
      log.error('request-failed', {
        method: request.method,
        endpoint: request.routeOptions.url,
        code,
        reason: reasonOf(failure),
        stack: failure instanceof Error ? failure.stack : undefined,
      });
    return refuse(reply, code);
  });
}
