import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { openTestServer, type TestServer } from '../testing/open-test-server.ts';

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
