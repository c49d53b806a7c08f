import { encode } from 'fast-png';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { openTestServer, type TestServer } from '../testing/open-test-server.ts';
import { makeBoard } from './make-board.ts';

const PNG = Buffer.from(encode({ width: 2, height: 1, data: new Uint8Array(8), channels: 4, depth: 8 }));

let open: TestServer;
beforeEach(async () => {
  open = await openTestServer();
});
afterEach(() => open.server.close());

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

/** A picture whose header asks for so many pixels; its checksums are not looked at. */
function asking(width: number, height: number): Buffer {
  const bomb = Buffer.from(PNG);
  bomb.writeUInt32BE(width, 16);
  bomb.writeUInt32BE(height, 20);
  return bomb;
}

/** ITU-T T.81, B.2: a frame of four colours, a scan and the end. */
const CMYK = Buffer.from([
  ...[0xff, 0xd8, 0xff, 0xc0, 0, 20, 8, 0, 9, 0, 9, 4, ...new Array<number>(12).fill(1)],
  ...[0xff, 0xda, 0, 8, 1, 1, 0, 0, 63, 0, 7, 7, 7, 0xff, 0xd9],
]);

test.each([
  [
    'a zip under the name of a picture',
    Buffer.from('PK\u0003\u0004 and much more of it'),
    'not-an-image',
    'whatever its name says',
  ],
  ['a picture that was cut off', PNG.subarray(0, PNG.length - 6), 'not-an-image', 'cut off'],
  ['nothing', Buffer.from([]), 'not-an-image', 'nothing in this file'],
  ['too long a side', asking(100_000, 1), 'too-large', 'longer than 30000 pixels'],
  ['too many pixels', asking(20_000, 20_000), 'too-large', 'more than 64 million pixels'],
])('%s is refused with what to do', async (_what, payload, error, words) => {
  const { board, cookie } = await onABoard('designer');
  const answer = await send(board, payload, { cookie });
  expect(answer.json()).toMatchObject({ error, words: expect.stringContaining(words) });
  expect(answer.headers.connection).toBe('close');
});

test('four inks and 16 bits are kept as they are: every page decides how to show them', async () => {
  const { board, cookie } = await onABoard('designer');
  const deep = encode({ width: 2, height: 1, data: new Uint16Array(6), channels: 3, depth: 16 });
  for (const payload of [CMYK, Buffer.from(deep)])
    expect((await send(board, payload, { cookie })).statusCode).toBe(201);
});

test('an image is what its bytes are, not what the request calls it', async () => {
  const { board, cookie } = await onABoard('designer');
  const sent = await send(board, PNG, { cookie, 'content-type': 'image/jpeg' });
  const back = await get(`/api/boards/${board}/blobs/${sent.json().hash}`, { cookie });
  expect(back.headers['content-type']).toBe('image/png');
  const odd = await send(board, PNG, { cookie, 'content-type': 'text/html' });
  expect(odd.json()).toMatchObject({ error: 'bad-request' });
});

test('more bytes than an image may have are refused before and while they come', async () => {
  await open.server.close();
  open = await openTestServer({ limits: { image: { mostImageBytes: 60, mostImagePixels: 9, mostImageSide: 9 } } });
  const { board, cookie } = await onABoard('designer');
  expect((await send(board, PNG, { cookie })).json()).toMatchObject({ error: 'too-large' });
});

test('a page asks whether the board has an image already, without fetching it', async () => {
  const [first, second] = [await onABoard('designer'), await onABoard('designer')];
  const { hash } = (await send(first.board, PNG, { cookie: first.cookie })).json();
  const held = (board: string, cookie: string) => get(`/api/boards/${board}/blobs/${hash}/held`, { cookie });
  expect((await held(first.board, first.cookie)).json()).toEqual({ held: true });
  expect((await held(second.board, second.cookie)).json()).toEqual({ held: false });
  expect((await held(first.board, '')).json()).toMatchObject({ error: 'not-entered' });
});
