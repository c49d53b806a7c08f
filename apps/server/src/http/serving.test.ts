import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { encode } from 'fast-png';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { openTestServer, type TestServer } from '../testing/open-test-server.ts';
import { makeBoard } from './make-board.ts';

const PNG = Buffer.from(encode({ width: 2, height: 1, data: new Uint8Array(8), channels: 4, depth: 8 }));

let directory: string;
let open: TestServer;
beforeEach(async () => {
  directory = await mkdtemp(join(tmpdir(), 'loopwright-page-'));
  await mkdir(join(directory, 'assets'));
  await writeFile(join(directory, 'index.html'), '<html><head><title>x</title></head><body></body></html>');
  await writeFile(join(directory, 'assets', 'main-abc123.js'), 'export {};');
  open = await openTestServer({ pageDirectory: directory });
});
afterEach(async () => {
  await open.server.close();
  await rm(directory, { recursive: true });
});

const get = (url: string, headers: Record<string, string> = {}) =>
  open.server.http.inject({ method: 'GET', url, headers: { host: 'board.test', ...headers } });

/** A cookie of somebody on a new board. */
async function onABoard(role: 'designer' | 'viewer') {
  const { board } = await makeBoard(open.ports, 'North links', undefined);
  const { link, secret } = open.ports.access.makeLink(board, role);
  await open.ports.store.addLink(link);
  const result = await open.ports.access.enter({ board, secret, name: 'Ada', held: [] });
  if (result.kind !== 'entered') throw new Error(result.why);
  return { board, cookie: `loopwright_${board}_${result.membership.id}=${result.token}` };
}

const send = (board: string, payload: Buffer, headers: Record<string, string>) =>
  open.server.http.inject({
    method: 'POST',
    url: `/api/boards/${board}/blobs`,
    payload,
    headers: { 'content-type': 'image/png', ...headers },
  });

test.each(['/', '/b/b4k2m9x1q'])('%s is the page, never cached, under a policy of its own host', async (url) => {
  const answer = await get(url);
  expect(answer.statusCode).toBe(200);
  expect(answer.headers['cache-control']).toBe('no-cache');
  const policy = String(answer.headers['content-security-policy']);
  expect(policy).toContain("script-src 'self';");
  expect(policy).toContain("connect-src 'self' ws://board.test;");
  const nonce = /nonce="([^"]+)"/.exec(answer.body)?.[1];
  expect(policy).toContain(`'nonce-${nonce}'`);
});

test('files with a hash in their name are kept for good', async () => {
  const answer = await get('/assets/main-abc123.js');
  expect(answer.headers['cache-control']).toBe('public, max-age=31536000, immutable');
  expect(answer.headers['x-content-type-options']).toBe('nosniff');
});

test.each([
  '/nothing',
  '/assets/../../etc/passwd',
  '/..%2f..%2fetc%2fpasswd',
  '/assets/%2e%2e%2f%2e%2e%2fpackage.json',
  '/%zz',
  `/b/${'x'.repeat(500)}`,
  '/b/x/y',
  '/api/boards',
])('%s is nothing, in words', async (url) => {
  const answer = await get(url);
  expect(answer.statusCode).toBe(404);
  expect(answer.json()).toMatchObject({ error: 'not-found', words: expect.any(String) });
  expect(open.log.events).not.toContain('request-failed');
});

test('the server says that it lives, that it takes writes, and what it counted', async () => {
  expect((await get('/healthz')).json()).toEqual({ alive: true });
  expect((await get('/readyz')).json()).toEqual({ ready: true });
  expect((await get('/metrics')).body).toContain('loopwright_connections 0');
});

test('a disk that takes no writes makes the server not ready', async () => {
  const full = await openTestServer({
    store: (store) => ({ ...store, check: () => Promise.reject(new Error('disk full')) }),
  });
  const answer = await full.server.http.inject('/readyz');
  expect(answer.statusCode).toBe(503);
  expect(answer.json()).toMatchObject({ ready: false, words: expect.stringContaining('disk full') });
  await full.server.close();
});

test('a site image is kept for the people on the board, and comes back unchanged', async () => {
  const { board, cookie } = await onABoard('designer');
  const sent = await send(board, PNG, { cookie });
  expect(sent.statusCode).toBe(201);
  const url = `/api/boards/${board}/blobs/${sent.json().hash}`;
  const back = await get(url, { cookie });
  expect(back.rawPayload).toEqual(PNG);
  expect(back.headers['content-type']).toBe('image/png');
  expect((await get(url)).json()).toMatchObject({ error: 'not-entered' });
});

test('an image of one board is not shown on another', async () => {
  const [first, second] = [await onABoard('designer'), await onABoard('designer')];
  const { hash } = (await send(first.board, PNG, { cookie: first.cookie })).json();
  expect((await get(`/api/boards/${second.board}/blobs/${hash}`, { cookie: second.cookie })).statusCode).toBe(404);
});

test('a viewer sends no images, and a stranger none', async () => {
  const viewer = await onABoard('viewer');
  expect((await send(viewer.board, PNG, { cookie: viewer.cookie })).json()).toMatchObject({ error: 'not-allowed' });
  expect((await send(viewer.board, PNG, {})).json()).toMatchObject({ error: 'not-entered' });
});

test('what only says it is an image is not kept', async () => {
  const { board, cookie } = await onABoard('designer');
  const answer = await send(board, Buffer.from('<svg/>'), { cookie });
  expect(answer.json()).toMatchObject({ error: 'not-an-image' });
});

test('an image of few bytes and very many pixels is not kept', async () => {
  const { board, cookie } = await onABoard('designer');
  const bomb = Buffer.from(PNG);
  bomb.writeUInt32BE(100_000, 16);
  bomb.writeUInt32BE(100_000, 20);
  expect((await send(board, bomb, { cookie })).json()).toMatchObject({ error: 'too-large' });
});
