import { mkdtemp, readdir, rm } from 'node:fs/promises';
import { connect, type Socket } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { seededRandom } from '@loopwright/model';
import { encode } from 'fast-png';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { openAccess } from '../../apps/server/src/access/access.ts';
import { machineChance } from '../../apps/server/src/access/secrets.ts';
import { buildServer } from '../../apps/server/src/build-server.ts';
import { systemClock } from '../../apps/server/src/clock.ts';
import { makeBoard } from '../../apps/server/src/http/make-board.ts';
import { SERVER_LIMITS } from '../../apps/server/src/limits.ts';
import { openFileBlobs } from '../../apps/server/src/storage/blobs.ts';
import { openSqliteStore } from '../../apps/server/src/storage/sqlite.ts';
import { paperLog } from '../../apps/server/src/testing/paper-log.ts';
import { type Entry, enter } from './page.ts';

const random = seededRandom(1);
/** Some 200 kB that do not pack: they come in several pieces. */
const PICTURE = Buffer.from(
  encode({
    ...{ width: 260, height: 260, channels: 3, depth: 8 },
    data: Uint8Array.from({ length: 202_800 }, () => random() * 256),
  }),
);
const MOST_BYTES = 1_000_000;
/** Milliseconds after which something that should have happened will not. */
vi.setConfig({ testTimeout: 20_000, hookTimeout: 20_000 });

interface Bench {
  /** Stops the server, once. */
  stop(): Promise<void>;
  readonly directory: string;
  readonly entry: Entry;
  fillDisk(): void;
  freeDisk(): void;
}

let bench: Bench;

/** A whole server on a free port that keeps its images on the disk. */
async function openBench(): Promise<Bench> {
  const directory = await mkdtemp(join(tmpdir(), 'loopwright-uploads-'));
  const [blobs, kept] = [await openFileBlobs(directory), await openSqliteStore(':memory:')];
  let isFull = false;
  const full = Object.assign(new Error('no space left'), { code: 'ENOSPC' });
  const store: typeof kept = {
    ...kept,
    addBlob: (board, hash) => (isFull ? Promise.reject(full) : kept.addBlob(board, hash)),
  };
  const access = openAccess({ store, clock: systemClock, chance: machineChance });
  const limits = { ...SERVER_LIMITS, image: { ...SERVER_LIMITS.image, mostImageBytes: MOST_BYTES }, closeGrace: 50 };
  const ports = { store, blobs, access, clock: systemClock, log: paperLog(), limits };
  const made = await makeBoard(ports, 'Uploads', undefined);
  const server = await buildServer(ports);
  const address = new URL(await server.http.listen({ host: '127.0.0.1', port: 0 })).host;
  let ending: Promise<void> | undefined;
  return {
    stop: () => {
      ending ??= server.close();
      return ending;
    },
    ...{ directory, entry: await enter({ ...made, address }, 'Ada') },
    fillDisk: () => {
      isFull = true;
    },
    freeDisk: () => {
      isFull = false;
    },
  };
}

beforeEach(async () => {
  bench = await openBench();
});
afterEach(async () => {
  await bench.stop();
  await rm(bench.directory, { recursive: true });
});

const address = () => `http://${bench.entry.address}/api/boards/${bench.entry.entered.board}/blobs`;
const headers = () => ({ cookie: bench.entry.cookie, 'content-type': 'image/png' });
const send = (body: BodyInit = new Uint8Array(PICTURE)) =>
  fetch(address(), { method: 'POST', headers: headers(), body });

/** Every file there is, of images on their way and of those that are kept. */
const files = async () =>
  (await readdir(bench.directory, { recursive: true })).filter((path) => /[0-9a-f-]{30}/.test(path));
const untilFiles = (count: number) => vi.waitFor(async () => expect(await files()).toHaveLength(count), 5000);

/** A connection on which a request is written by hand. */
function line(): { readonly socket: Socket; readonly heard: () => string; readonly ended: Promise<void> } {
  const { hostname, port } = new URL(address());
  const socket = connect({ host: hostname, port: Number(port) });
  let text = '';
  socket.on('data', (data) => {
    text += data.toString('latin1');
  });
  socket.on('error', () => socket.destroy()); // a reset is an end, too
  return { socket, heard: () => text, ended: new Promise((resolve) => socket.once('close', () => resolve())) };
}

function head(length: string): string {
  const { pathname, host } = new URL(address());
  const fields = {
    host,
    ...headers(),
    ...(length === 'chunked' ? { 'transfer-encoding': length } : { 'content-length': length }),
  };
  const lines = Object.entries(fields).map(([name, value]) => `${name}: ${value}\r\n`);
  return `POST ${pathname} HTTP/1.1\r\n${lines.join('')}\r\n`;
}

test.each(['200000', 'chunked'])('a line that breaks in the middle (%s) leaves nothing behind', async (length) => {
  const { socket } = line();
  socket.write(head(length));
  socket.write(length === 'chunked' ? `ffff\r\n` : '');
  socket.write(PICTURE.subarray(0, 50_000));
  await untilFiles(1);
  socket.destroy();
  await untilFiles(0);
  expect((await send()).status).toBe(201);
});

test('a request that says it is shorter than it is keeps nothing, and its rest is no request', async () => {
  const { socket, heard, ended } = line();
  socket.write(head('5000'));
  socket.write(PICTURE);
  await ended;
  expect(heard()).toMatch(/^HTTP\/1\.1 400 /);
  expect(heard()).not.toContain('201');
  await untilFiles(0);
});

test('more than an image may have is refused while it comes, however it says its length', async () => {
  const { socket, heard, ended } = line();
  socket.write(head('chunked'));
  const piece = Buffer.concat([PICTURE, Buffer.alloc(MOST_BYTES)]);
  socket.write(Buffer.concat([Buffer.from(`${piece.length.toString(16)}\r\n`), piece]));
  await ended;
  expect(heard()).toMatch(/^HTTP\/1\.1 413 /);
  await untilFiles(0);
  const told = line();
  told.socket.write(head(String(MOST_BYTES + 1)));
  await told.ended;
  expect(told.heard()).toMatch(/^HTTP\/1\.1 413 /);
});

test('one picture sent by five at once is kept once, and all five are told so', async () => {
  const answers = await Promise.all([1, 2, 3, 4, 5].map(async () => (await send()).json()));
  expect(new Set(answers.map(({ hash }) => hash)).size).toBe(1);
  await untilFiles(1);
});

test('on a full disk a picture is not called kept, and is when there is room again', async () => {
  bench.fillDisk();
  const answer = await send();
  expect([answer.status, await answer.json()]).toMatchObject([503, { error: 'not-saved' }]);
  bench.freeDisk();
  const { hash } = await (await send()).json();
  const back = await fetch(`${address()}/${hash}`, { headers: headers() });
  expect(Buffer.from(await back.arrayBuffer())).toEqual(PICTURE);
});

test('one sender cannot fill the disk: past the limit of a minute nothing is read', async () => {
  const many = Array.from({ length: SERVER_LIMITS.imagesPerMinute + 5 }, (_, index) => {
    return send(new Uint8Array(Buffer.concat([PICTURE.subarray(0, 60), Buffer.from([index])]))); // each cut off
  });
  const statuses = await Promise.all(many.map(async (answer) => (await answer).status));
  expect(statuses.filter((status) => status === 429)).toHaveLength(5);
  await untilFiles(0);
});

test('a server that is told to stop does not wait for a picture that trickles in, and keeps nothing of it', async () => {
  const { socket, ended } = line();
  socket.write(head(String(PICTURE.length)));
  socket.write(PICTURE.subarray(0, 60_000));
  await untilFiles(1);
  await Promise.all([bench.stop(), ended]);
  await untilFiles(0);
});

test.each([
  ['GET', '/../../etc/passwd'],
  ['GET', '/..%2f..%2fboards.sqlite'],
  ['GET', `/${'0'.repeat(63)}G`],
  ['GET', '/incoming/held'],
  ['PUT', `/${'0'.repeat(64)}`],
  ['DELETE', `/${'0'.repeat(64)}`],
])('%s …/blobs%s finds nothing', async (method, path) => {
  const { socket, heard, ended } = line();
  const { pathname, host } = new URL(address());
  socket.write(
    `${method} ${pathname}${path} HTTP/1.1\r\nhost: ${host}\r\ncookie: ${headers().cookie}\r\nconnection: close\r\n\r\n`,
  );
  await ended;
  expect(heard()).toMatch(/^HTTP\/1\.1 (404|200) /);
  expect(heard()).toMatch(/not-found|"held":false/);
});
