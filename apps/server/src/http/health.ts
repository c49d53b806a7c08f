import type { FastifyInstance } from 'fastify';
import { reasonOf } from '../log.ts';
import type { Metrics } from '../metrics.ts';
import type { ServerPorts } from '../ports.ts';
import type { Rooms } from '../rooms/rooms.ts';

/** For whoever runs the server: is it alive, can it take work, what has it counted. */
export function healthEndpoints(app: FastifyInstance, ports: ServerPorts, rooms: Rooms, metrics: Metrics): void {
  app.get('/healthz', async () => ({ alive: true }));

  app.get('/readyz', async (_request, reply) => {
    const refusing = rooms.refusing();
    const why = await ports.store.check().then(
      () => (refusing > 0 ? `${refusing} rooms wait for the store` : undefined),
      (failure: unknown) => reasonOf(failure),
    );
    if (why === undefined) return { ready: true };
    return reply.code(503).send({ ready: false, error: 'not-saved', words: `The store takes no writes: ${why}.` });
  });

  app.get('/metrics', async (_request, reply) =>
    reply.header('content-type', metrics.registry.contentType).send(await metrics.registry.metrics()),
  );
}
