import cookie from '@fastify/cookie';
import rateLimit from '@fastify/rate-limit';
import fastify, { type FastifyInstance } from 'fastify';
import { blobEndpoints } from './http/blobs.ts';
import { boardEndpoints } from './http/boards.ts';
import { answerFailures } from './http/failures.ts';
import { healthEndpoints } from './http/health.ts';
import { pageEndpoints } from './http/page.ts';
import { refuse } from './http/problem.ts';
import { guard } from './http/security.ts';
import { makeMetrics } from './metrics.ts';
import type { ServerPorts } from './ports.ts';
import { openRooms } from './rooms/rooms.ts';
import { takeSockets } from './rooms/upgrade.ts';

export interface LoopwrightServer {
  /** To be listened with, or asked without a port in a test. */
  readonly http: FastifyInstance;
  /** Withdraws a link: nobody enters by it any more, and whoever did is closed in words. */
  revokeLink(link: string): Promise<void>;
  /** Closes every connection, waits for what is on its way to the store, and closes the store. */
  close(): Promise<void>;
}

/** The whole server over its ports. Builds, never listens. */
export async function buildServer(ports: ServerPorts): Promise<LoopwrightServer> {
  const { limits, log, store } = ports;
  const metrics = makeMetrics();
  const rooms = openRooms({ ...ports, metrics });
  const http = fastify({
    bodyLimit: limits.bodyBytes,
    // One proxy, when there is one: what was said before it may be made up, e.g. to get round the limits by address.
    trustProxy: ports.publicUrl === undefined ? false : (_address, hop) => hop < 1,
    requestTimeout: limits.requestTimeout,
    logger: false,
    frameworkErrors: (_failure, _request, reply) => refuse(reply, 'not-found'), // an address that cannot be read
  });

  answerFailures(http, log);
  await http.register(cookie);
  await http.register(rateLimit, { global: false });
  await guard(http, ports.publicUrl);
  boardEndpoints(http, ports);
  blobEndpoints(http, ports);
  healthEndpoints(http, ports, rooms, metrics);
  await pageEndpoints(http, ports.pageDirectory, log);

  const stopTaking = takeSockets(http.server, {
    ...ports,
    rooms,
    metrics,
    parseCookies: (header) => http.parseCookie(header),
  });
  return {
    http,
    async revokeLink(link) {
      await store.revokeLink(link);
      rooms.closeLink(link, 'link-revoked');
    },
    async close() {
      stopTaking();
      await rooms.end();
      // A picture that trickles in over a slow line would hold up the end for minutes.
      const stopWaiting = ports.clock.after(limits.closeGrace, () => http.server.closeAllConnections());
      await http.close();
      stopWaiting();
      await store.close();
    },
  };
}
