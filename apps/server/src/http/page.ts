import { existsSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import fastifyStatic from '@fastify/static';
import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify';
import type { Log } from '../log.ts';
import { refuse } from './problem.ts';

/** Files under here carry a hash of their content in their name. */
const HASHED = '/assets/';

/** The built page: its files, and the page itself at `/` and `/b/:board`. */
export async function pageEndpoints(app: FastifyInstance, directory: string | undefined, log: Log): Promise<void> {
  const root = directory === undefined ? undefined : resolve(directory);
  if (root !== undefined && existsSync(join(root, 'index.html'))) await servePage(app, root);
  else if (root !== undefined) log.warn('page-not-built', { missing: root, build: 'node apps/server/build.mjs board' });
  app.setNotFoundHandler((_request, reply) => refuse(reply, 'not-found'));
}

async function servePage(app: FastifyInstance, root: string): Promise<void> {
  await app.register(fastifyStatic, {
    root,
    index: false,
    cacheControl: false,
    setHeaders: (reply, path) => {
      const hashed = path.startsWith(join(root, HASHED));
      reply.setHeader('cache-control', hashed ? 'public, max-age=31536000, immutable' : 'no-cache');
    },
  });
  const show = async (request: FastifyRequest, reply: FastifyReply) =>
    reply
      .header('content-type', 'text/html; charset=utf-8')
      .header('cache-control', 'no-cache')
      .send(withNonce(await readFile(join(root, 'index.html'), 'utf8'), request.styleNonce));
  app.get('/', show);
  app.get('/index.html', show);
  app.get('/b/:board', show);
}

/** Tells the page's libraries the word by which their style elements are known. */
function withNonce(html: string, nonce: string): string {
  return html.replace('</head>', `<meta property="csp-nonce" nonce="${nonce}"></head>`);
}
