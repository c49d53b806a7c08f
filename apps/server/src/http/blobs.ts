import { isId } from '@loopwright/model';
import type { BlobAnswer } from '@loopwright/protocol';
import type { FastifyInstance, FastifyRequest } from 'fastify';
import { heldTokens } from '../access/cookies.ts';
import { rightsOf } from '../access/rights.ts';
import type { ServerPorts } from '../ports.ts';
import { isBlobHash } from '../storage/blobs.ts';
import { imageSizeOf } from '../storage/image-size.ts';
import { refuse } from './problem.ts';

/** What somebody at this browser may do on the board: the most that any of its memberships may. */
async function rightsAt({ access }: ServerPorts, board: string, request: FastifyRequest) {
  let rights: 'read' | 'write' | undefined;
  for (const held of isId(board) ? heldTokens(board, request.cookies) : []) {
    const result = await access.admit(board, held);
    if (result.kind === 'admitted' && rights !== 'write') rights = rightsOf(result.role, 'plan');
  }
  return rights;
}

/** Site images in and out; only for people on the board that shows them. */
export function blobEndpoints(app: FastifyInstance, ports: ServerPorts): void {
  const { blobs, limits, store } = ports;
  app.addContentTypeParser(
    ['image/png', 'image/jpeg', 'image/webp', 'application/octet-stream'],
    { parseAs: 'buffer' },
    async (_request: FastifyRequest, body: Buffer) => body,
  );

  app.post<{ Params: { board: string } }>(
    '/api/boards/:board/blobs',
    { bodyLimit: limits.imageBytes, config: { rateLimit: { max: limits.imagesPerMinute, timeWindow: '1 minute' } } },
    async (request, reply) => {
      const { board } = request.params;
      const rights = await rightsAt(ports, board, request);
      if (rights !== 'write') return refuse(reply, rights === 'read' ? 'not-allowed' : 'not-entered');
      if (!(request.body instanceof Uint8Array)) return refuse(reply, 'not-an-image');
      const size = imageSizeOf(request.body);
      if (!size) return refuse(reply, 'not-an-image');
      if (size.width * size.height > limits.imagePixels) return refuse(reply, 'too-large');
      const kept = await blobs.put(request.body);
      if (kept.kind === 'not-an-image') return refuse(reply, 'not-an-image');
      await store.addBlob(board, kept.hash);
      const answer: BlobAnswer = { hash: kept.hash };
      return reply.code(201).send(answer);
    },
  );

  app.get<{ Params: { board: string; hash: string } }>('/api/boards/:board/blobs/:hash', async (request, reply) => {
    const { board, hash } = request.params;
    if ((await rightsAt(ports, board, request)) === undefined) return refuse(reply, 'not-entered');
    const found = isBlobHash(hash) && (await store.hasBlob(board, hash)) ? await blobs.get(hash) : undefined;
    if (!found) return refuse(reply, 'not-found');
    return reply
      .header('content-type', found.type)
      .header('cache-control', 'private, max-age=31536000, immutable')
      .send(Buffer.from(found.bytes.buffer, found.bytes.byteOffset, found.bytes.byteLength));
  });
}
