import { isId, LIMITS as MODEL_LIMITS, parsePlan, parseText } from '@loopwright/model';
import { type CreateBoardAnswer, type EnterAnswer, LIMITS, parseCreateBoard, parseEnter } from '@loopwright/protocol';
import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify';
import type { EnterResult } from '../access/access.ts';
import { COOKIE_SECONDS, cookieName, heldTokens } from '../access/cookies.ts';
import type { ServerPorts } from '../ports.ts';
import { makeBoard } from './make-board.ts';
import { NO_ENTRY, refuse } from './problem.ts';

const MINUTE = '1 minute';

/** Making a board, and coming in by a link. */
export function boardEndpoints(app: FastifyInstance, ports: ServerPorts): void {
  const { limits } = ports;
  app.post(
    '/api/boards',
    { bodyLimit: limits.planBodyBytes, config: { rateLimit: { max: limits.boardsPerMinute, timeWindow: MINUTE } } },
    async (request, reply) => createBoard(ports, request, reply),
  );
  app.post<{ Params: { board: string } }>(
    '/api/boards/:board/enter',
    { config: { rateLimit: { max: limits.entriesPerMinute, timeWindow: MINUTE } } },
    async (request, reply) => {
      const { board } = request.params;
      const asked = parseEnter(request.body);
      if (!asked) return refuse(reply, 'bad-request');
      if (!isId(board)) return refuse(reply, 'link-not-known');
      const name = parseText(asked.name, LIMITS.mostNameLetters) ?? '';
      const held = heldTokens(board, request.cookies);
      return answerEntry(ports, reply, await ports.access.enter({ board, secret: asked.secret, name, held }));
    },
  );
}

/** The address people reach this server at. */
function addressOf(request: FastifyRequest, publicUrl: string | undefined): string {
  return publicUrl ?? `${request.protocol}://${request.headers.host ?? ''}`;
}

async function createBoard(ports: ServerPorts, request: FastifyRequest, reply: FastifyReply): Promise<FastifyReply> {
  const asked = parseCreateBoard(request.body);
  if (!asked) return refuse(reply, 'bad-request');
  const parsed = asked.plan === undefined ? undefined : parsePlan(asked.plan);
  if (parsed?.kind === 'not-a-plan') return refuse(reply, 'not-a-plan', parsed.why);
  const name = parseText(asked.name, MODEL_LIMITS.name) || parsed?.plan.site.name || 'Board';
  const { board, secret } = await makeBoard(ports, name, parsed?.plan);
  ports.log.info('board-made', { board });
  const answer: CreateBoardAnswer = { board, link: `${addressOf(request, ports.publicUrl)}/b/${board}#${secret}` };
  return reply.code(201).header('cache-control', 'no-store').send(answer);
}

function answerEntry(ports: ServerPorts, reply: FastifyReply, result: EnterResult): FastifyReply {
  if (result.kind === 'refused') return refuse(reply, NO_ENTRY[result.why]);
  const { membership, role, token } = result;
  // The page of today knows designers only; links for others are kept and checked, and open when the page can show them.
  if (role !== 'designer') return refuse(reply, 'not-allowed');
  if (token !== undefined)
    reply.setCookie(cookieName(membership.board, membership.id), token, {
      path: '/',
      httpOnly: true,
      sameSite: 'strict',
      secure: ports.publicUrl?.startsWith('https:') ?? false,
      maxAge: COOKIE_SECONDS,
    });
  const { board, id, epoch, name, ink } = membership;
  const answer: EnterAnswer = { board, membership: id, epoch, role, name, ink };
  return reply.header('cache-control', 'no-store').send(answer);
}
