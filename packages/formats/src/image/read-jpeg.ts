import type { Window } from './byte-source.ts';
import { orientationIn } from './exif.ts';
import type { Stored } from './image-header.ts';

const APP1 = 0xe1;
const START_OF_SCAN = 0xda;
const END_OF_IMAGE = 0xd9;
/** 'Exif' and two zeros. */
const EXIF = [0x4578, 0x6966, 0x0000] as const;

/** Segments before the pixels of an honest image: a colour profile alone may have 255. */
const MOST_SEGMENTS = 2000;

/** Whether a marker starts a frame: SOF0 to SOF15, without the tables DHT, JPG and DAC that lie between them. */
const startsFrame = (marker: number) => marker >= 0xc0 && marker <= 0xcf && ![0xc4, 0xc8, 0xcc].includes(marker);

/** Baseline, extended and progressive with Huffman coding: what browsers decode. */
const isDecoded = (marker: number) => marker <= 0xc2;

/** Markers that stand alone: TEM, RST0 to RST7. */
const standsAlone = (marker: number) => marker === 0x01 || (marker >= 0xd0 && marker <= 0xd7);

/**
 * A JPEG from its segments up to the first scan, and whether it is all there: whether an end follows the scan.
 * Inside a scan no end can be read by chance, its bytes are kept apart from markers.
 *
 * Source: ITU-T T.81, B.1.1 (markers), B.2.2 (frame header), table B.1; Exif 2.32, 4.7.2 (APP1).
 *
 * Cost: O(segments); the search for the end goes backwards and mostly ends at once.
 */
export async function readJpeg(bytes: Window): Promise<Stored> {
  let frame: Stored | undefined;
  let orientation = 1;
  let at = 2;
  for (let segment = 0; segment < MOST_SEGMENTS; segment++) {
    const head = await bytes.look(at, 4);
    if (!head) return 'cut off';
    if (head.getUint8(0) !== 0xff) return 'not an image';
    const marker = head.getUint8(1);
    if (marker === 0xff || standsAlone(marker)) {
      at += marker === 0xff ? 1 : 2;
      continue;
    }
    const length = head.getUint16(2);
    if (marker === END_OF_IMAGE || length < 2) return 'not an image';
    if (startsFrame(marker)) frame = await frameAt(bytes, at, marker);
    if (typeof frame === 'string') return frame;
    if (marker === APP1) orientation = (await exifAt(bytes, at, length)) ?? orientation;
    if (marker === START_OF_SCAN) {
      if (!frame) return 'not an image';
      return (await endsAfter(bytes, at + 2 + length)) ? { ...frame, orientation } : 'cut off';
    }
    at += 2 + length;
  }
  return 'not an image';
}

async function frameAt(bytes: Window, at: number, marker: number): Promise<Stored> {
  const head = await bytes.look(at, 10);
  if (!head) return 'cut off';
  const [bits, heightPixels, widthPixels, colours] = [
    head.getUint8(4),
    head.getUint16(5),
    head.getUint16(7),
    head.getUint8(9),
  ];
  if (!isDecoded(marker) || bits !== 8) return 'coding';
  if (colours !== 1 && colours !== 3 && colours !== 4) return 'not an image';
  return { widthPixels, heightPixels, bits, inks: colours === 4, orientation: 1 };
}

async function exifAt(bytes: Window, at: number, length: number): Promise<number | undefined> {
  const data = await bytes.look(at + 4, length - 2);
  if (!data || data.byteLength < 14 || EXIF.some((word, index) => data.getUint16(index * 2) !== word)) return undefined;
  return orientationIn(new DataView(data.buffer, data.byteOffset + 6, data.byteLength - 6));
}

const STEP = 64 * 1024;

async function endsAfter(bytes: Window, start: number): Promise<boolean> {
  for (let to = bytes.size; to > start; to -= STEP - 1) {
    const from = Math.max(start, to - STEP);
    const part = await bytes.look(from, to - from);
    if (!part) return false;
    for (let at = part.byteLength - 2; at >= 0; at--)
      if (part.getUint8(at) === 0xff && part.getUint8(at + 1) === END_OF_IMAGE) return true;
  }
  return false;
}
