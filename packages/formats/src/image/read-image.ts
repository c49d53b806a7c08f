import { type ByteSource, type Window, windowOn } from './byte-source.ts';
import {
  asShown,
  type ImageFault,
  type ImageLimits,
  type ImageReading,
  type ImageType,
  type Stored,
} from './image-header.ts';
import { readJpeg } from './read-jpeg.ts';
import { readPng } from './read-png.ts';
import { readWebp } from './read-webp.ts';

const PNG = [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a];
const JPEG = [0xff, 0xd8, 0xff];
const RIFF = [0x52, 0x49, 0x46, 0x46];
const WEBP = [0x57, 0x45, 0x42, 0x50];

/** Bytes from the start that tell the type. */
export const TYPE_BYTES = 12;

const startsWith = (bytes: Uint8Array, signature: readonly number[], at = 0) =>
  signature.every((byte, index) => bytes[at + index] === byte);

/**
 * What an image says it is by its first bytes, whatever its name or header claims.
 *
 * Source: PNG (ISO/IEC 15948, 5.2), JPEG (ITU-T T.81, SOI and the marker after it), WebP (RFC 9649, 2.4).
 */
export function imageTypeOf(bytes: Uint8Array): ImageType | undefined {
  if (startsWith(bytes, PNG)) return 'image/png';
  if (startsWith(bytes, JPEG)) return 'image/jpeg';
  if (startsWith(bytes, RIFF) && startsWith(bytes, WEBP, 8)) return 'image/webp';
  return undefined;
}

const READERS: Readonly<Record<ImageType, (bytes: Window) => Promise<Stored>>> = {
  'image/png': readPng,
  'image/jpeg': readJpeg,
  'image/webp': readWebp,
};

/**
 * What an image says about itself, and whether it may lie under a plan. Nothing is decoded: a few bytes can ask for
 * gigabytes of pixels, so this is asked before anybody tries.
 *
 * The page and the server ask the same function with the same limits, so that what the one takes the other takes.
 *
 * Cost: O(chunks or segments); a few reads of 64 kB each.
 */
export async function readImage(source: ByteSource, limits: ImageLimits): Promise<ImageReading> {
  const fault = (what: ImageFault): ImageReading => ({ kind: 'fault', fault: what });
  if (source.size === 0) return fault('empty');
  if (source.size > limits.mostImageBytes) return fault('too many bytes');
  const type = imageTypeOf(await source.read(0, TYPE_BYTES));
  if (!type) return fault('not an image');
  const stored = await READERS[type](windowOn(source));
  if (typeof stored === 'string') return fault(stored);
  const { widthPixels, heightPixels } = stored;
  if (widthPixels === 0 || heightPixels === 0) return fault('no pixels');
  if (Math.max(widthPixels, heightPixels) > limits.mostImageSide) return fault('too long a side');
  if (widthPixels * heightPixels > limits.mostImagePixels) return fault('too many pixels');
  return { kind: 'image', header: { type, ...asShown(stored) } };
}
