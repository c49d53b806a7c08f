import type { Window } from './byte-source.ts';
import { orientationIn } from './exif.ts';
import type { Stored } from './image-header.ts';

const IHDR = 0x49484452;
const IDAT = 0x49444154;
const IEND = 0x49454e44;
const EXIF = 0x65584966;
/** Says that it is an animation (PNG, third edition, 11.3.6.1). */
const ACTL = 0x6163544c;

/** Chunks of an honest image: written 8 kB at a time there are some 16,000. */
const MOST_CHUNKS = 100_000;

/** Bits a colour type may have: grey, colours, palette, grey and colours with opacity. */
const DEPTHS: ReadonlyMap<number, readonly number[]> = new Map([
  [0, [1, 2, 4, 8, 16]],
  [2, [8, 16]],
  [3, [1, 2, 4, 8]],
  [4, [8, 16]],
  [6, [8, 16]],
]);

/**
 * A PNG from its header, and whether it is all there: chunk by chunk up to its end, no pixel is looked at.
 *
 * Source: PNG (ISO/IEC 15948), 5.3 (chunks), 11.2.2 (IHDR, table 11.1); eXIf by the third edition, 11.3.3.
 *
 * Cost: O(chunks), at most `MOST_CHUNKS`.
 */
export async function readPng(bytes: Window): Promise<Stored> {
  const head = await bytes.look(8, 25);
  if (!head) return 'cut off';
  if (head.getUint32(0) !== 13 || head.getUint32(4) !== IHDR) return 'not an image';
  const [widthPixels, heightPixels] = [head.getUint32(8), head.getUint32(12)];
  const bits = head.getUint8(16);
  if (!DEPTHS.get(head.getUint8(17))?.includes(bits)) return 'not an image';
  const end = await walk(bytes);
  if (typeof end === 'string') return end;
  return { widthPixels, heightPixels, bits, inks: false, orientation: end.orientation };
}

async function walk(bytes: Window): Promise<{ readonly orientation: number } | 'cut off' | 'moving' | 'not an image'> {
  let orientation = 1;
  let hasPixels = false;
  let at = 8;
  for (let chunk = 0; chunk < MOST_CHUNKS; chunk++) {
    const head = await bytes.look(at, 8);
    if (!head) return 'cut off';
    const [length, type] = [head.getUint32(0), head.getUint32(4)];
    if (at + 12 + length > bytes.size) return 'cut off';
    if (type === IEND) return hasPixels ? { orientation } : 'cut off';
    if (type === ACTL) return 'moving';
    if (type === IDAT) hasPixels = true;
    if (type === EXIF && length <= 65_536) {
      const data = await bytes.look(at + 8, length);
      if (data) orientation = orientationIn(data);
    }
    at += 12 + length;
  }
  return 'not an image';
}
