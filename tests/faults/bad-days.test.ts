import { createServer } from 'node:net';
import { demoPlan } from '@loopwright/demo';
import { openPlan } from '@loopwright/document';
import { readCourseFile, writeBoardFile } from '@loopwright/formats';
import { CLOSE_CODES, closeWords } from '@loopwright/protocol';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import WebSocket from 'ws';
import { openAccess } from '../../apps/server/src/access/access.ts';
import { machineChance } from '../../apps/server/src/access/secrets.ts';
import { buildServer, type LoopwrightServer } from '../../apps/server/src/build-server.ts';
import { systemClock } from '../../apps/server/src/clock.ts';
import { makeBoard } from '../../apps/server/src/http/make-board.ts';
import { SERVER_LIMITS } from '../../apps/server/src/limits.ts';
import { openSqliteStore } from '../../apps/server/src/storage/sqlite.ts';
import type { Store } from '../../apps/server/src/storage/store.ts';
import { paperBlobs } from '../../apps/server/src/testing/open-test-server.ts';
import { paperLog } from '../../apps/server/src/testing/paper-log.ts';
import { enter, nameOf, openPage, type Page, someHole, untilShown } from './page.ts';
import { buildServerOnce, dataDirectory, startServer } from './running-server.ts';

/** Bytes of one update that the server of these tests takes. */
const LARGE = 1000;
/** Milliseconds after which something that should have happened will not. */
const TIMEOUT = 60_000;
vi.setConfig({ testTimeout: TIMEOUT });

interface Bench {
  readonly server: LoopwrightServer;
  readonly store: Store;
  readonly link: { readonly address: string; readonly board: string; readonly secret: string };
  fillDisk(): void;
  freeDisk(): void;
}

let bench: Bench;
let pages: Page[] = [];

/** A whole server in this process, on a free port, with a disk that can be filled. */
async function openBench(): Promise<Bench> {
  let full = false;
  const kept = await openSqliteStore(':memory:');
  const unlessFull = <T>(write: () => Promise<T>) => (full ? Promise.reject(new Error('disk full')) : write());
  const store: Store = {
    ...kept,
    append: (key, updates) => unlessFull(() => kept.append(key, updates)),
    check: () => unlessFull(kept.check),
  };
  const access = openAccess({ store, clock: systemClock, chance: machineChance });
  const limits = { ...SERVER_LIMITS, updateBytes: LARGE };
  const ports = { store, blobs: paperBlobs(), access, clock: systemClock, log: paperLog(), limits };
  const made = await makeBoard(ports, 'Bad days', demoPlan());
  const server = await buildServer(ports);
  const listening = await server.http.listen({ host: '127.0.0.1', port: 0 });
  return {
    server,
    store,
    link: { ...made, address: new URL(listening).host },
    fillDisk: () => {
      full = true;
    },
    freeDisk: () => {
      full = false;
    },
  };
}

beforeEach(async () => {
  bench = await openBench();
});
afterEach(async () => {
  for (const page of pages) page.close();
  pages = [];
  await bench.server.close();
});

async function join(name: string): Promise<Page> {
  const page = openPage(await enter(bench.link, name));
  pages.push(page);
  await page.until('saved');
  return page;
}

test('on a full disk an edit is not called saved and is shown to nobody; when there is room again it is saved', async () => {
  const [ada, grace] = [await join('Ada'), await join('Grace')];
  const before = nameOf(grace.plan, 0);
  bench.fillDisk();
  ada.plan.edit({ edit: 'name hole', ...someHole(ada.plan, 0), name: 'Long way round' });
  await ada.until('offline');
  expect(nameOf(grace.plan, 0)).toBe(before);
  expect((await bench.server.http.inject('/readyz')).statusCode).toBe(503);
  bench.freeDisk();
  await ada.until('saved');
  await untilShown(grace, () => nameOf(grace.plan, 0) === 'Long way round');
  expect((await bench.server.http.inject('/readyz')).statusCode).toBe(200);
});

test('a connection lost in the middle of a drag leaves the plan as it was, and the drag is forgotten', async () => {
  const [ada, grace] = [await join('Ada'), await join('Grace')];
  const before = grace.plan.read();
  const drag = { edit: 'move part', ...someHole(ada.plan, 0), part: 'green', to: { x: 1, y: 2 } } as const;
  ada.connection.presence.say({ selection: [], drag });
  const dragger = () => grace.connection.presence.others().find(({ name }) => name === 'Ada');
  await untilShown(grace, () => dragger()?.drag !== undefined);
  ada.cut();
  await untilShown(grace, () => dragger() === undefined);
  expect(grace.plan.read()).toBe(before);
});

test('edits made without a connection arrive when it is back, beside what others did meanwhile', async () => {
  const [ada, grace] = [await join('Ada'), await join('Grace')];
  ada.cut();
  await ada.until('offline');
  ada.plan.edit({ edit: 'name hole', ...someHole(ada.plan, 0), name: 'Ferns' });
  grace.plan.edit({ edit: 'name hole', ...someHole(grace.plan, 1), name: 'Quarry' });
  await Promise.all([ada.until('saved'), grace.until('saved')]);
  await untilShown(ada, () => nameOf(ada.plan, 1) === 'Quarry');
  await untilShown(grace, () => nameOf(grace.plan, 0) === 'Ferns');
});

test('a refused edit is told in words, comes back as a board file, and does not stick to the browser', async () => {
  const [ada, grace] = [await join('Ada'), await join('Grace')];
  const before = grace.plan.read();
  const closed = new Promise<[number, Uint8Array | undefined]>((resolve) =>
    ada.connection.onClosed((code, draft) => resolve([code, draft])),
  );
  ada.plan.edit({ edit: 'name hole', ...someHole(ada.plan, 0), name: 'Ferns' });
  await ada.until('saved');
  // Within what a person may write, and more than this server is told to take at once.
  ada.plan.edit({ edit: 'judge', ...someHole(ada.plan, 1), verdict: 'weak', reason: 'x'.repeat(LARGE + 1) });
  ada.plan.edit({ edit: 'name hole', ...someHole(ada.plan, 2), name: 'Quarry' });
  const [code, draft] = await closed;
  expect(closeWords(code)).toContain('can be downloaded as a draft');
  expect(ada.connection.saved()).toEqual({ kind: 'closed', code });
  const read = readCourseFile(writeBoardFile(openPlan(draft).read()));
  if (read.kind !== 'board') throw new Error('a draft has to open again');
  expect(read.plan.routings[0]?.holes[2]?.name).toBe('Quarry');
  await untilShown(grace, () => nameOf(grace.plan, 0) === 'Ferns');
  expect(grace.plan.read().routings[0]?.holes.slice(1)).toEqual(before.routings[0]?.holes.slice(1));
  const again = await enter(bench.link, '', ada.cookie);
  expect(again.entered).toMatchObject({ membership: ada.membership, epoch: 2 });
});

test('a withdrawn link closes the page for good, in words', async () => {
  const ada = await join('Ada');
  const closed = new Promise<number>((resolve) => ada.connection.onClosed(resolve));
  const access = openAccess({ store: bench.store, clock: systemClock, chance: machineChance });
  const entered = await access.enter({ board: bench.link.board, secret: bench.link.secret, name: 'Ada', held: [] });
  if (entered.kind !== 'entered') throw new Error('the demo link has to open');
  await bench.server.revokeLink(entered.link.id);
  expect(await closed).toBe(CLOSE_CODES['link-revoked'].code);
  expect(await bench.store.link(entered.link.id)).toMatchObject({ revoked: true });
});

test.each([
  ['no cookie', {}, CLOSE_CODES['link-not-known'].code],
  ['a cookie that was made up', { cookie: 'loopwright_b1_m1=guess' }, CLOSE_CODES['link-not-known'].code],
])('a socket with %s is closed in words', async (_what, headers, code) => {
  const socket = new WebSocket(`ws://${bench.link.address}/sync/b1/m1/plan`, { headers });
  expect(await new Promise((resolve) => socket.once('close', resolve))).toBe(code);
});

test('a socket opened by a page of another site is turned away', async () => {
  const socket = new WebSocket(`ws://${bench.link.address}/sync/b1/m1/plan`, { origin: 'https://evil.example' });
  const failure = await new Promise<Error>((resolve) => socket.once('error', resolve));
  expect(failure.message).toContain('403');
});

test('rubbish on a socket closes that socket, and everybody else goes on', async () => {
  const ada = await join('Ada');
  const { cookie, entered } = await enter(bench.link, 'Mallory');
  const address = `ws://${bench.link.address}/sync/${entered.board}/${entered.membership}/plan`;
  const socket = new WebSocket(address, { headers: { cookie } });
  socket.once('open', () => socket.send(new Uint8Array([255, 255, 255, 255])));
  expect(await new Promise((resolve) => socket.once('close', resolve))).toBe(CLOSE_CODES.malformed.code);
  ada.plan.edit({ edit: 'name hole', ...someHole(ada.plan, 0), name: 'Still here' });
  await ada.until('saved');
});

test('a server on a busy port says so in one sentence with the way out', async () => {
  buildServerOnce();
  const data = dataDirectory();
  const taken = createServer();
  await new Promise<void>((resolve) => taken.listen(0, '127.0.0.1', resolve));
  const address = taken.address();
  const port = typeof address === 'object' && address !== null ? address.port : 0;
  const complaint = await startServer(data.path, String(port)).then(
    () => 'it started',
    (failure: Error) => failure.message,
  );
  taken.close();
  data.remove();
  expect(complaint).toContain(
    `Port ${port} is in use: stop what uses it, or choose another, e.g. PORT=${port + 1} npm start.`,
  );
});

test('a second server on the same boards says so in one sentence and leaves them alone', async () => {
  buildServerOnce();
  const data = dataDirectory();
  const server = await startServer(data.path);
  const complaint = await startServer(data.path).then(
    () => 'it started',
    (failure: Error) => failure.message,
  );
  expect(complaint).toContain('Another Loopwright server has the boards in');
  expect((await enter(server, 'Ada')).entered.board).toBe(server.board);
  expect(await server.terminate()).toBe(0);
  const again = await startServer(data.path);
  await again.kill();
  data.remove();
});
