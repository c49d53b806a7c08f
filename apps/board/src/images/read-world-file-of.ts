import { type ReadWorldFile, readWorldFile } from '@loopwright/formats/image';

/** Bytes that are looked at: a world file has some hundred; what is longer is refused by its first part. */
const MOST_BYTES = 8_000;

/** The world file in a dropped file; one that is gone meanwhile is told. */
export async function readWorldFileOf(file: Blob): Promise<ReadWorldFile> {
  try {
    return readWorldFile(await file.slice(0, MOST_BYTES).text());
  } catch {
    return { kind: 'unreadable', why: 'This file can no longer be read from the disk: drop it again.' };
  }
}
