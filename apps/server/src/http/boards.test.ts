import { HTTP_ERRORS, parseCreateBoardAnswer, parseEnterAnswer } from '@loopwright/protocol';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { openTestServer, type TestServer } from '../testing/open-test-server.ts';

let open: TestServer;
beforeEach(async () => {
  open = await openTestServer();
});
afterEach(() => open.server.close());

const post = (url: string, payload: object, headers: Record<string, string> = {}) =>
  open.server.http.inject({ method: 'POST', url, payload, headers: { host: 'board.test', ...headers } });

async function newBoard(payload: object = { name: 'North links' }) {
  const answer = await post('/api/boards', payload);
  const made = parseCreateBoardAnswer(answer.json());
  if (!made) throw new Error(`no board was made: ${answer.body}`);
  const [, secret = ''] = made.link.split('#');
  return { ...made, secret };
}

test('a new board has a link whose secret stands in the fragment', async () => {
  const { board, link } = await newBoard();
  expect(link).toMatch(new RegExp(`^http://board\\.test/b/${board}#.+`));
  expect(await open.ports.store.board(board)).toMatchObject({ name: 'North links' });
});

test('the secret buys a cookie that no script reads and no other site sends', async () => {
  const { board, secret } = await newBoard();
  const answer = await post(`/api/boards/${board}/enter`, { secret, name: 'Ada' });
  const entered = parseEnterAnswer(answer.json());
  expect(entered).toMatchObject({ board, epoch: 1, role: 'designer', name: 'Ada', ink: 0 });
  expect(answer.headers['set-cookie']).toMatch(
    new RegExp(
      `^loopwright_${board}_${entered?.membership}=.+; Path=/; HttpOnly; SameSite=Strict$`.replace(
        '.+;',
        '.+; Max-Age=\\d+;',
      ),
    ),
  );
  expect(answer.headers['cache-control']).toBe('no-store');
});

test('the same browser is the same person, and gets no second cookie', async () => {
  const { board, secret } = await newBoard();
  const first = await post(`/api/boards/${board}/enter`, { secret, name: 'Ada' });
  const cookie = String(first.headers['set-cookie']).split(';')[0] ?? '';
  const again = await post(`/api/boards/${board}/enter`, { secret, name: 'Ada' }, { cookie });
  expect(again.json()).toEqual(first.json());
  expect(again.headers['set-cookie']).toBeUndefined();
});

test.each([
  ['a wrong secret', { secret: 'guess', name: 'Ada' }, 'link-not-known'],
  ['no secret', { name: 'Ada' }, 'bad-request'],
  ['rubbish', ['x'], 'bad-request'],
] as const)('%s is refused by a documented code, in words', async (_what, payload, code) => {
  const { board } = await newBoard();
  const answer = await post(`/api/boards/${board}/enter`, payload);
  expect(answer.statusCode).toBe(HTTP_ERRORS[code].status);
  expect(answer.json()).toEqual({ error: code, words: HTTP_ERRORS[code].words });
});

test('a withdrawn link is said to be withdrawn', async () => {
  const { board, secret } = await newBoard();
  const { link } = open.ports.access.makeLink(board, 'designer');
  await open.ports.store.addLink(link);
  await open.server.revokeLink(link.id);
  expect((await post(`/api/boards/${board}/enter`, { secret, name: 'Ada' })).statusCode).toBe(200);
  expect(await open.ports.store.link(link.id)).toMatchObject({ revoked: true });
});

test('a page of another site changes nothing', async () => {
  const answer = await post('/api/boards', {}, { origin: 'https://evil.example' });
  expect(answer.json()).toMatchObject({ error: 'wrong-origin' });
});

test('what is no plan is refused with the reason, and no board is made', async () => {
  const answer = await post('/api/boards', { plan: { loopwright: 99, routings: [] } });
  expect(answer.statusCode).toBe(400);
  expect(answer.json()).toMatchObject({ error: 'not-a-plan', words: expect.stringContaining('99') });
});

test('a body over the limit, or no JSON, is one sentence and no stack trace', async () => {
  await open.server.close();
  open = await openTestServer({ limits: { planBodyBytes: 100 } });
  const large = await post('/api/boards', { name: 'x'.repeat(200) });
  expect(large.json()).toEqual({ error: 'too-large', words: HTTP_ERRORS['too-large'].words });
  const broken = await open.server.http.inject({
    method: 'POST',
    url: '/api/boards',
    payload: '{"plan":',
    headers: { 'content-type': 'application/json' },
  });
  expect(broken.json()).toEqual({ error: 'bad-request', words: HTTP_ERRORS['bad-request'].words });
});

test('guessing secrets is slowed down', async () => {
  await open.server.close();
  open = await openTestServer({ limits: { entriesPerMinute: 2 } });
  const codes: number[] = [];
  for (let i = 0; i < 3; i++) codes.push((await post('/api/boards/b1/enter', { secret: 'guess' })).statusCode);
  expect(codes).toEqual([403, 403, 429]);
});

test('behind a proxy, an address made up by the sender does not get round that', async () => {
  await open.server.close();
  open = await openTestServer({ limits: { entriesPerMinute: 1 }, publicUrl: 'https://boards.example.org' });
  const enterFrom = (madeUp: string) =>
    post('/api/boards/b1/enter', { secret: 'guess' }, { 'x-forwarded-for': `${madeUp}, 192.0.2.7` });
  expect((await enterFrom('198.51.100.1')).statusCode).toBe(403);
  expect((await enterFrom('198.51.100.2')).statusCode).toBe(429);
});

test('a full disk makes no board and says so', async () => {
  await open.server.close();
  const full = Object.assign(new Error('database or disk is full'), { code: 'SQLITE_FULL' });
  open = await openTestServer({ store: (store) => ({ ...store, addBoard: () => Promise.reject(full) }) });
  const answer = await post('/api/boards', {});
  expect(answer.statusCode).toBe(503);
  expect(answer.json()).toMatchObject({ error: 'not-saved' });
  expect(open.log.events).toEqual(['request-failed']);
});
