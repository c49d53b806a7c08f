// Pictures of a site that nobody took: made here, so that every pixel of them is known.
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { deflateSync } from 'node:zlib';
import { afterAll } from 'vitest';

type Colour = readonly [red: number, green: number, blue: number];

/** Square pictures as files, for the tests of one file; gone after the last. */
export function openPictures() {
  const folder = mkdtempSync(join(tmpdir(), 'loopwright-pictures-'));
  afterAll(() => rmSync(folder, { recursive: true, force: true }));
  return {
    file(name: string, size: number, band: Colour): string {
      const path = join(folder, name);
      writeFileSync(path, madePicture(size, size, band));
      return path;
    },
  };
}

/** A PNG of this size: pale ground, a darker grid every hundred pixels, a band of another colour along its upper edge. */
function madePicture(width: number, height: number, band: Colour): Buffer {
  const rows = Buffer.alloc(height * (1 + width * 3));
  for (let row = 0; row < height; row++) {
    const start = row * (1 + width * 3) + 1; // the byte before it names no filter
    for (let column = 0; column < width; column++) {
      const onGrid = row % 100 === 0 || column % 100 === 0;
      const [red, green, blue] = row < 40 ? band : onGrid ? [120, 130, 110] : [214, 220, 196];
      rows.set([red, green, blue], start + column * 3);
    }
  }
  const header = Buffer.alloc(13);
  header.writeUInt32BE(width, 0);
  header.writeUInt32BE(height, 4);
  header.set([8, 2, 0, 0, 0], 8); // eight bits, red green blue
  return Buffer.concat([
    Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]),
    chunk('IHDR', header),
    chunk('IDAT', deflateSync(rows)),
    chunk('IEND', Buffer.alloc(0)),
  ]);
}

/** Length, name, content and check, as ISO/IEC 15948 (PNG) section 5.3 lays a chunk out. */
function chunk(name: string, content: Buffer): Buffer {
  const named = Buffer.concat([Buffer.from(name, 'latin1'), content]);
  const length = Buffer.alloc(4);
  length.writeUInt32BE(content.length);
  const check = Buffer.alloc(4);
  check.writeUInt32BE(checkOf(named));
  return Buffer.concat([length, named, check]);
}

/** The cyclic check of ISO/IEC 15948 annex D, bit by bit. */
function checkOf(bytes: Buffer): number {
  let check = 0xffffffff;
  for (const byte of bytes) {
    check ^= byte;
    for (let bit = 0; bit < 8; bit++) check = check & 1 ? (check >>> 1) ^ 0xedb88320 : check >>> 1;
  }
  return (check ^ 0xffffffff) >>> 0;
}
