import { mkdtemp, readFile, rm, stat, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { openPlan } from '@loopwright/document';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { loadRoom } from '../rooms/load-room.ts';
import { openTestServer, type TestServer } from '../testing/open-test-server.ts';
import { demoBoard } from './demo-board.ts';

let directory: string;
let open: TestServer;
beforeEach(async () => {
  directory = await mkdtemp(join(tmpdir(), 'loopwright-demo-'));
  open = await openTestServer();
});
afterEach(async () => {
  await open.server.close();
  await rm(directory, { recursive: true });
});

test('the first run makes a demo with eighteen holes on a site image; the next finds it again', async () => {
  const made = await demoBoard(open.ports, directory);
  const room = await loadRoom({ board: made.board, room: 'plan' }, open.ports);
  const plan = openPlan(room.state()).read();
  expect(plan.routings[0]?.holes.length).toBeGreaterThanOrEqual(18);
  const hash = plan.site.images[0]?.blob ?? '';
  expect(await open.ports.store.hasBlob(made.board, hash)).toBe(true);
  expect((await open.ports.blobs.get(hash))?.type).toBe('image/png');

  expect(await demoBoard(open.ports, directory)).toEqual(made);
  expect((await stat(join(directory, 'demo-link.json'))).mode & 0o077).toBe(0);
  await writeFile(join(directory, 'demo-link.json'), 'spoilt');
  const anew = await demoBoard(open.ports, directory);
  expect(anew.board).not.toBe(made.board);
  expect(JSON.parse(await readFile(join(directory, 'demo-link.json'), 'utf8'))).toEqual(anew);
});
