import { mkdtemp, readdir, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { type Blobs, openFileBlobs } from './blobs.ts';
import { imageTypeOf } from './image-type.ts';

const PNG = new Uint8Array([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 1, 2, 3]);

let directory: string;
let blobs: Blobs;
beforeEach(async () => {
  directory = await mkdtemp(join(tmpdir(), 'loopwright-blobs-'));
  blobs = await openFileBlobs(directory);
});
afterEach(() => rm(directory, { recursive: true }));

test('an image is kept once, under the hash of its bytes', async () => {
  const first = await blobs.put(PNG);
  expect(await blobs.put(PNG)).toEqual(first);
  if (first.kind !== 'kept') throw new Error('a PNG has to be kept');
  expect(await blobs.get(first.hash)).toEqual({ type: 'image/png', bytes: Buffer.from(PNG) });
  expect(await readdir(join(directory, first.hash.slice(0, 2)))).toEqual([first.hash]);
});

test('what is no image is not kept, whatever it is called', async () => {
  expect(await blobs.put(new TextEncoder().encode('<svg onload="x()"/>'))).toEqual({ kind: 'not-an-image' });
  expect(await blobs.put(new Uint8Array())).toEqual({ kind: 'not-an-image' });
});

test('a name that is no hash finds nothing and leaves the directory alone', async () => {
  expect(await blobs.get('../../etc/passwd')).toBeUndefined();
  expect(await blobs.get('0'.repeat(64))).toBeUndefined();
});

// Signatures: PNG (ISO/IEC 15948, 5.2), JPEG (ITU-T T.81), WebP (RFC 9649, 2.4).
test.each([
  [[0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a], 'image/png'],
  [[0xff, 0xd8, 0xff, 0xe0], 'image/jpeg'],
  [[0x52, 0x49, 0x46, 0x46, 9, 9, 9, 9, 0x57, 0x45, 0x42, 0x50], 'image/webp'],
  [[0x47, 0x49, 0x46, 0x38], undefined],
  [[0x52, 0x49, 0x46, 0x46], undefined],
])('the first bytes %j say %s', (first, type) => {
  expect(imageTypeOf(new Uint8Array(first))).toBe(type);
});
