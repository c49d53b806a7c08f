import { randomBytes } from 'node:crypto';
import helmet from '@fastify/helmet';
import type { FastifyInstance, FastifyRequest } from 'fastify';
import { isOwnOrigin } from '../access/origin.ts';
import { refuse } from './problem.ts';

declare module 'fastify' {
  interface FastifyRequest {
    /** Lets the page's own libraries add a style element, and nobody else. */
    styleNonce: string;
  }
}

/** What the page may do: everything from this host, images and workers made by the page itself, nothing else. */
function policyFor(request: FastifyRequest, secure: boolean): string {
  const host = request.headers.host ?? '';
  const sync = /^[\w.:[\]-]+$/.test(host) ? ` ${secure ? 'wss' : 'ws'}://${host}` : '';
  return [
    "default-src 'none'",
    "script-src 'self'",
    `style-src 'self' 'nonce-${request.styleNonce}'`,
    "style-src-attr 'unsafe-inline'",
    "img-src 'self' blob: data:",
    "font-src 'self'",
    `connect-src 'self'${sync}`,
    "worker-src 'self' blob:",
    "manifest-src 'self'",
    "base-uri 'none'",
    "form-action 'self'",
    "frame-ancestors 'none'",
  ].join('; ');
}

/** Headers that keep the page to itself, and the check that a change comes from it. */
export async function guard(app: FastifyInstance, publicUrl: string | undefined): Promise<void> {
  const secure = publicUrl?.startsWith('https:') ?? false;
  await app.register(helmet, {
    contentSecurityPolicy: false,
    // Plain http on a local network is a normal way to run this: a browser would hold these against the next server there.
    strictTransportSecurity: secure,
    crossOriginOpenerPolicy: secure ? { policy: 'same-origin' } : false,
    originAgentCluster: secure,
    referrerPolicy: { policy: 'no-referrer' },
  });
  app.decorateRequest('styleNonce', '');
  app.addHook('onRequest', async (request, reply) => {
    request.styleNonce = randomBytes(16).toString('base64');
    reply.header('content-security-policy', policyFor(request, secure));
    if (request.method !== 'GET' && request.method !== 'HEAD' && !isOwnOrigin(request.headers, publicUrl))
      return refuse(reply, 'wrong-origin');
  });
}
