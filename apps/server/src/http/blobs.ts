import { Readable } from 'node:stream';
import { type ImageFault, imageFaultSentence } from '@loopwright/formats/image';
import { isId } from '@loopwright/model';
import type { BlobAnswer, HeldAnswer, HttpErrorCode } from '@loopwright/protocol';
import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify';
import { heldTokens } from '../access/cookies.ts';
import { rightsOf } from '../access/rights.ts';
import type { ServerPorts } from '../ports.ts';
import { isBlobHash } from '../storage/blobs.ts';
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

const IS_LIMIT: ReadonlySet<ImageFault> = new Set(['too many bytes', 'too many pixels', 'too long a side']);

/** What of a body has not come yet is not waited for: the connection ends with the answer. */
function refuseBody(reply: FastifyReply, code: HttpErrorCode, words?: string): FastifyReply {
  return refuse(reply.header('connection', 'close'), code, words);
}

/** Site images in and out; only for people on the board that shows them. */
export function blobEndpoints(app: FastifyInstance, ports: ServerPorts): void {
  const { blobs, limits, store } = ports;
  // The bytes say what they are; nothing is read before it is known who sends them.
  app.addContentTypeParser(
    ['image/png', 'image/jpeg', 'image/webp', 'application/octet-stream'],
    async (_request: FastifyRequest, body: Readable) => body,
  );

  app.post<{ Params: { board: string } }>(
    '/api/boards/:board/blobs',
    { config: { rateLimit: { max: limits.imagesPerMinute, timeWindow: '1 minute' } } },
    async (request, reply) => {
      const { board } = request.params;
      const sayFault = (fault: ImageFault) =>
        refuseBody(reply, IS_LIMIT.has(fault) ? 'too-large' : 'not-an-image', imageFaultSentence(fault, limits.image));
      const rights = await rightsAt(ports, board, request);
      if (rights !== 'write') return refuseBody(reply, rights === 'read' ? 'not-allowed' : 'not-entered');
      if (!(request.body instanceof Readable)) return sayFault('not an image');
      if (Number(request.headers['content-length']) > limits.image.mostImageBytes) return sayFault('too many bytes');
      const kept = await blobs.put(request.body.iterator({ destroyOnReturn: false }), limits.image);
      if (kept.kind === 'fault') return sayFault(kept.fault);
      if (kept.kind === 'broken off') return refuseBody(reply, 'bad-request');
      await store.addBlob(board, kept.hash);
      const answer: BlobAnswer = { hash: kept.hash };
      return reply.code(201).send(answer);
    },
  );

  type Named = { Params: { board: string; hash: string } };
  const find = async (board: string, hash: string) =>
    isBlobHash(hash) && (await store.hasBlob(board, hash)) ? blobs.get(hash) : undefined;

  app.get<Named>('/api/boards/:board/blobs/:hash', { exposeHeadRoute: false }, async (request, reply) => {
    const { board, hash } = request.params;
    if ((await rightsAt(ports, board, request)) === undefined) return refuse(reply, 'not-entered');
    const blob = await find(board, hash);
    if (!blob) return refuse(reply, 'not-found');
    return reply
      .header('content-type', blob.type)
      .header('content-length', blob.size)
      .header('cache-control', 'private, max-age=31536000, immutable')
      .send(blob.read());
  });

  app.get<Named>('/api/boards/:board/blobs/:hash/held', async (request, reply) => {
    const { board, hash } = request.params;
    if ((await rightsAt(ports, board, request)) === undefined) return refuse(reply, 'not-entered');
    const answer: HeldAnswer = { held: (await find(board, hash)) !== undefined };
    return reply.header('cache-control', 'no-store').send(answer);
  });
}
