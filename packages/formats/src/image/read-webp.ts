import type { Window } from './byte-source.ts';
import { orientationIn } from './exif.ts';
import type { Stored } from './image-header.ts';

const LOSSY = 0x56503820;
const LOSSLESS = 0x5650384c;
const EXTENDED = 0x56503858;
const EXIF = 0x45584946;
/** Flag of an extended file: it holds an animation. */
const MOVING = 0x02;
const MOST_CHUNKS = 10_000;

const highThree = (view: DataView, at: number) => view.getUint16(at, true) + view.getUint8(at + 2) * 0x10000;

/**
 * A WebP from its header, and whether it is all there: a simple file, lossy or lossless, or an extended one.
 *
 * Source: RFC 9649, 2.3 (RIFF), 2.5 to 2.7; the lossy frame header by RFC 6386, 9.1.
 */
export async function readWebp(bytes: Window): Promise<Stored> {
  const head = await bytes.look(0, 30);
  if (!head) return 'cut off';
  const end = 8 + head.getUint32(4, true);
  if (end > bytes.size) return 'cut off';
  const size = sizeIn(head);
  if (typeof size === 'string') return size;
  const orientation = await walk(bytes, end);
  return typeof orientation === 'string' ? orientation : { ...size, bits: 8, inks: false, orientation };
}

function sizeIn(
  head: DataView,
): { readonly widthPixels: number; readonly heightPixels: number } | 'moving' | 'not an image' {
  const chunk = head.getUint32(12);
  if (chunk === EXTENDED) {
    if ((head.getUint8(20) & MOVING) !== 0) return 'moving';
    return { widthPixels: highThree(head, 24) + 1, heightPixels: highThree(head, 27) + 1 };
  }
  if (chunk === LOSSY)
    return { widthPixels: head.getUint16(26, true) & 0x3fff, heightPixels: head.getUint16(28, true) & 0x3fff };
  if (chunk !== LOSSLESS || head.getUint8(20) !== 0x2f) return 'not an image';
  const bits = head.getUint32(21, true);
  return { widthPixels: (bits & 0x3fff) + 1, heightPixels: ((bits >>> 14) & 0x3fff) + 1 };
}

async function walk(bytes: Window, end: number): Promise<number | 'cut off' | 'not an image'> {
  let orientation = 1;
  let hasPixels = false;
  let at = 12;
  for (let chunk = 0; chunk < MOST_CHUNKS; chunk++) {
    if (at + 8 > end) return hasPixels ? orientation : 'cut off';
    const head = await bytes.look(at, 8);
    if (!head) return 'cut off';
    const [type, length] = [head.getUint32(0), head.getUint32(4, true)];
    if (at + 8 + length > end) return 'cut off';
    if (type === LOSSY || type === LOSSLESS) hasPixels = true;
    if (type === EXIF && length <= 65_536) orientation = orientationOf(await bytes.look(at + 8, length)) ?? orientation;
    at += 8 + length + (length % 2);
  }
  return 'not an image';
}

/** Some writers put JPEG's 'Exif' and two zeros before the data. */
function orientationOf(data: DataView | undefined): number | undefined {
  if (!data || data.byteLength < 14) return undefined;
  const before = data.getUint32(0) === 0x45786966 ? 6 : 0;
  return orientationIn(new DataView(data.buffer, data.byteOffset + before, data.byteLength - before));
}
