import { createHash, randomUUID } from 'node:crypto';
import { mkdir, open, readFile, rename, rm, stat } from 'node:fs/promises';
import { join } from 'node:path';
import { type ImageType, imageTypeOf } from './image-type.ts';

export interface Blob {
  readonly type: ImageType;
  readonly bytes: Uint8Array;
}

export type KeptBlob = { readonly kind: 'kept'; readonly hash: string } | { readonly kind: 'not-an-image' };

/** Site images, each kept once under the SHA-256 of its bytes. */
export interface Blobs {
  put(bytes: Uint8Array): Promise<KeptBlob>;
  get(hash: string): Promise<Blob | undefined>;
}

const HASH = /^[0-9a-f]{64}$/;

/** Whether an untrusted value can be the name of a blob. */
export function isBlobHash(value: string): boolean {
  return HASH.test(value);
}

/** Blobs as files under a directory: written beside their place, flushed, then renamed, so that a half-written one is never found. */
export async function openFileBlobs(directory: string): Promise<Blobs> {
  await mkdir(directory, { recursive: true });
  const pathOf = (hash: string) => join(directory, hash.slice(0, 2), hash);
  return {
    async put(bytes) {
      if (imageTypeOf(bytes) === undefined) return { kind: 'not-an-image' };
      const hash = createHash('sha256').update(bytes).digest('hex');
      if (!(await isThere(pathOf(hash)))) await writeWhole(pathOf(hash), bytes);
      return { kind: 'kept', hash };
    },
    async get(hash) {
      if (!isBlobHash(hash) || !(await isThere(pathOf(hash)))) return undefined;
      const bytes = await readFile(pathOf(hash));
      const type = imageTypeOf(bytes);
      return type && { type, bytes };
    },
  };
}

async function isThere(path: string): Promise<boolean> {
  return stat(path).then(
    (found) => found.isFile(),
    () => false,
  );
}

async function writeWhole(path: string, bytes: Uint8Array): Promise<void> {
  const directory = join(path, '..');
  await mkdir(directory, { recursive: true });
  const beside = `${path}.${randomUUID()}.part`;
  try {
    const file = await open(beside, 'wx');
    try {
      await file.writeFile(bytes);
      await file.sync();
    } finally {
      await file.close();
    }
    await rename(beside, path);
  } catch (failure) {
    await rm(beside, { force: true });
    throw failure;
  }
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
