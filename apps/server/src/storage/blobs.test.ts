import { mkdir, mkdtemp, readdir, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { encode } from 'fast-png';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { SERVER_LIMITS } from '../limits.ts';
import { type Blobs, openFileBlobs } from './blobs.ts';

const PNG = encode({ width: 40, height: 30, data: new Uint8Array(40 * 30 * 3), channels: 3, depth: 8 });
const LIMITS = SERVER_LIMITS.image;

let directory: string;
let blobs: Blobs;
beforeEach(async () => {
  directory = await mkdtemp(join(tmpdir(), 'loopwright-blobs-'));
  blobs = await openFileBlobs(directory);
});
afterEach(() => rm(directory, { recursive: true }));

const incoming = () => readdir(join(directory, 'incoming'));

async function kept(pieces: Iterable<Uint8Array>): Promise<string> {
  const answer = await blobs.put(pieces, LIMITS);
  if (answer.kind !== 'kept') throw new Error(`a PNG has to be kept, and was not: ${JSON.stringify(answer)}`);
  return answer.hash;
}

test('an image is kept once, under the hash of its bytes, in however many pieces it comes', async () => {
  const hash = await kept([PNG]);
  expect(await kept([...PNG].map((byte) => new Uint8Array([byte])))).toBe(hash);
  const found = await blobs.get(hash);
  expect(found).toMatchObject({ type: 'image/png', size: PNG.length });
  expect(Buffer.concat((await found?.read().toArray()) ?? [])).toEqual(Buffer.from(PNG));
  expect(await readdir(join(directory, hash.slice(0, 2)))).toEqual([hash]);
  expect(await incoming()).toEqual([]);
});

test('of what is no image, is cut off or too large nothing is kept', async () => {
  const put = (bytes: Uint8Array, limits = LIMITS) => blobs.put([bytes], limits);
  expect(await put(new TextEncoder().encode('<svg onload="x()"/>'))).toEqual({ kind: 'fault', fault: 'not an image' });
  expect(await put(new Uint8Array())).toEqual({ kind: 'fault', fault: 'empty' });
  expect(await put(PNG.subarray(0, PNG.length - 3))).toEqual({ kind: 'fault', fault: 'cut off' });
  expect(await put(PNG, { ...LIMITS, mostImageBytes: 50 })).toEqual({ kind: 'fault', fault: 'too many bytes' });
  expect(await readdir(directory)).toEqual(['incoming']);
  expect(await incoming()).toEqual([]);
});

test('what is no image is not read to its end', async () => {
  let taken = 0;
  function* zip() {
    for (; taken < 1000; taken++) yield new TextEncoder().encode('PK and so on for ever');
  }
  expect(await blobs.put(zip(), LIMITS)).toEqual({ kind: 'fault', fault: 'not an image' });
  expect(taken).toBeLessThan(2);
});

test('an image whose sender went away leaves nothing behind', async () => {
  async function* torn() {
    yield PNG.subarray(0, 60);
    throw new Error('the line is dead');
  }
  expect(await blobs.put(torn(), LIMITS)).toEqual({ kind: 'broken off' });
  expect(await incoming()).toEqual([]);
});

test('what was on its way when the server was killed is cleared away at the next start', async () => {
  await writeFile(join(directory, 'incoming', 'half'), PNG.subarray(0, 60));
  await openFileBlobs(directory);
  expect(await incoming()).toEqual([]);
});

test('a name that is no hash finds nothing and leaves the directory alone', async () => {
  expect(await blobs.get('../../etc/passwd')).toBeUndefined();
  expect(await blobs.get('0'.repeat(64))).toBeUndefined();
  await mkdir(join(directory, '00', '0'.repeat(64)), { recursive: true });
  expect(await blobs.get('0'.repeat(64))).toBeUndefined();
});
