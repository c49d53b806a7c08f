import { createHash } from 'node:crypto';
import { type FileHandle, open } from 'node:fs/promises';
import { type ImageFault, type ImageLimits, imageTypeOf, readImage, TYPE_BYTES } from '@loopwright/formats/image';

/** An image as it comes, piece by piece. */
export type ImagePieces = Iterable<Uint8Array> | AsyncIterable<Uint8Array>;

/** What came of an image that was sent. */
export type KeptBlob =
  | { readonly kind: 'kept'; readonly hash: string }
  | { readonly kind: 'fault'; readonly fault: ImageFault }
  /** Whoever sent it went away before the end. */
  | { readonly kind: 'broken off' };

/**
 * Writes an image to a new file as its bytes come, and reads its header there: never more than a piece is in memory.
 * What is no image is not read on after its first bytes, what is too large not after its limit.
 * The file is flushed when it is `kept`; else it is the caller's to remove.
 */
export async function writeImage(path: string, pieces: ImagePieces, limits: ImageLimits): Promise<KeptBlob> {
  const file = await open(path, 'wx+');
  try {
    const came = await take(file, pieces, limits);
    if ('kind' in came) return came;
    const reading = await readImage({ size: came.size, read: (at, length) => readAt(file, at, length) }, limits);
    if (reading.kind === 'fault') return reading;
    await file.sync();
    return { kind: 'kept', hash: came.hash };
  } finally {
    await file.close();
  }
}

type Came = { readonly size: number; readonly hash: string };

async function take(file: FileHandle, pieces: ImagePieces, limits: ImageLimits): Promise<Came | KeptBlob> {
  const fault = (what: ImageFault): KeptBlob => ({ kind: 'fault', fault: what });
  const hash = createHash('sha256');
  let first = new Uint8Array();
  let size = 0;
  for await (const piece of untilBroken(pieces)) {
    if (piece === 'broken off') return { kind: piece };
    size += piece.length;
    if (size > limits.mostImageBytes) return fault('too many bytes');
    if (first.length < TYPE_BYTES) {
      first = new Uint8Array(Buffer.concat([first, piece.subarray(0, TYPE_BYTES)]));
      if (first.length >= TYPE_BYTES && !imageTypeOf(first)) return fault('not an image');
    }
    hash.update(piece);
    await file.writeFile(piece);
  }
  return { size, hash: hash.digest('hex') };
}

/** That somebody stops sending is nothing to report; that the disk takes no more is. */
async function* untilBroken(pieces: ImagePieces): AsyncGenerator<Uint8Array | 'broken off'> {
  try {
    yield* pieces;
  } catch {
    yield 'broken off';
  }
}

async function readAt(file: FileHandle, at: number, length: number): Promise<Uint8Array> {
  const { buffer, bytesRead } = await file.read(new Uint8Array(length), 0, length, at);
  return buffer.subarray(0, bytesRead);
}
