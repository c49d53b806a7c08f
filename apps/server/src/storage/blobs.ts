import { randomUUID } from 'node:crypto';
import { createReadStream } from 'node:fs';
import { mkdir, open, rename, rm, stat } from 'node:fs/promises';
import { join } from 'node:path';
import type { Readable } from 'node:stream';
import { type ImageLimits, type ImageType, imageTypeOf, TYPE_BYTES } from '@loopwright/formats/image';
import { type ImagePieces, type KeptBlob, writeImage } from './write-image.ts';

export interface Blob {
  readonly type: ImageType;
  readonly size: number;
  /** Its bytes from the first to the last. */
  read(): Readable;
}

/** Site images, each kept once under the SHA-256 of its bytes. */
export interface Blobs {
  /** Takes an image as its bytes come. Nothing of it is kept unless all of it came and it is an image within the limits. */
  put(pieces: ImagePieces, limits: ImageLimits): Promise<KeptBlob>;
  get(hash: string): Promise<Blob | undefined>;
}

const HASH = /^[0-9a-f]{64}$/;

/** Whether an untrusted value can be the name of a blob. */
export function isBlobHash(value: string): boolean {
  return HASH.test(value);
}

/** Where images lie while they come in. */
const INCOMING = 'incoming';

/** Blobs as files under a directory: written beside their place, flushed, then renamed, so that a half-written one is never found. */
export async function openFileBlobs(directory: string): Promise<Blobs> {
  const incoming = join(directory, INCOMING);
  await rm(incoming, { recursive: true, force: true }); // what was on its way when the server last stopped
  await mkdir(incoming, { recursive: true });
  const pathOf = (hash: string) => join(directory, hash.slice(0, 2), hash);
  return {
    async put(pieces, limits) {
      const beside = join(incoming, randomUUID());
      try {
        const written = await writeImage(beside, pieces, limits);
        if (written.kind === 'kept' && (await sizeOf(pathOf(written.hash))) === undefined)
          await settle(beside, pathOf(written.hash));
        return written;
      } finally {
        await rm(beside, { force: true });
      }
    },
    async get(hash) {
      const path = pathOf(hash);
      const size = isBlobHash(hash) ? await sizeOf(path) : undefined;
      const type = size === undefined ? undefined : await typeOf(path);
      return size === undefined || !type ? undefined : { type, size, read: () => createReadStream(path) };
    },
  };
}

async function sizeOf(path: string): Promise<number | undefined> {
  return stat(path).then(
    (found) => (found.isFile() ? found.size : undefined),
    () => undefined,
  );
}

async function typeOf(path: string): Promise<ImageType | undefined> {
  const file = await open(path, 'r');
  try {
    const { buffer } = await file.read({ buffer: new Uint8Array(TYPE_BYTES), position: 0 });
    return imageTypeOf(buffer);
  } finally {
    await file.close();
  }
}

async function settle(from: string, to: string): Promise<void> {
  const directory = join(to, '..');
  await mkdir(directory, { recursive: true });
  await rename(from, to);
  await flushDirectory(directory);
}

/** The name of a file is only safe when its directory is; systems that cannot flush one (Windows) do without. */
async function flushDirectory(directory: string): Promise<void> {
  if (process.platform === 'win32') return;
  const handle = await open(directory, 'r');
  try {
    await handle.sync();
  } finally {
    await handle.close();
  }
}
