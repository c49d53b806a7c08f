import { imageTypeOf } from './image-type.ts';

export interface ImageSize {
  readonly width: number;
  readonly height: number;
}

type Look = (view: DataView) => ImageSize | undefined;

/** Source: PNG (ISO/IEC 15948, 11.2.2): IHDR comes first. */
const ofPng: Look = (view) =>
  view.byteLength < 24 || view.getUint32(12) !== 0x49484452
    ? undefined
    : { width: view.getUint32(16), height: view.getUint32(20) };

/** Whether a marker starts a frame: SOF0 to SOF15, without the tables DHT, JPG and DAC that lie between them. */
const startsFrame = (marker: number) => marker >= 0xc0 && marker <= 0xcf && ![0xc4, 0xc8, 0xcc].includes(marker);

/** Source: JPEG (ITU-T T.81, B.1.1 and B.2.2): segments are passed over up to the frame header. */
const ofJpeg: Look = (view) => {
  let at = 2;
  while (at + 9 <= view.byteLength && view.getUint8(at) === 0xff) {
    const marker = view.getUint8(at + 1);
    if (marker === 0xff) at += 1;
    else if (startsFrame(marker)) return { width: view.getUint16(at + 7), height: view.getUint16(at + 5) };
    else at += 2 + view.getUint16(at + 2);
  }
  return undefined;
};

/** Source: WebP (RFC 9649, 2.5 to 2.7): a simple file, lossy or lossless, or an extended one with its canvas. */
const ofWebp: Look = (view) => {
  if (view.byteLength < 30) return undefined;
  const chunk = view.getUint32(12);
  if (chunk === 0x56503858)
    return { width: (view.getUint32(24, true) & 0xffffff) + 1, height: highThree(view, 27) + 1 };
  if (chunk === 0x56503820)
    return { width: view.getUint16(26, true) & 0x3fff, height: view.getUint16(28, true) & 0x3fff };
  if (chunk !== 0x5650384c) return undefined;
  const bits = view.getUint32(21, true);
  return { width: (bits & 0x3fff) + 1, height: ((bits >>> 14) & 0x3fff) + 1 };
};

const highThree = (view: DataView, at: number) => view.getUint16(at, true) + view.getUint8(at + 2) * 0x10000;

const LOOKS = { 'image/png': ofPng, 'image/jpeg': ofJpeg, 'image/webp': ofWebp } as const;

/**
 * The pixels an image says it has, from its header alone; `undefined` when the bytes are no image, or say nothing.
 *
 * A few bytes can ask for gigabytes of pixels on the page of everybody who looks: this is asked before they are kept.
 *
 * Cost: O(segments before the frame header).
 */
export function imageSizeOf(bytes: Uint8Array): ImageSize | undefined {
  const type = imageTypeOf(bytes);
  const size = type && LOOKS[type](new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength));
  return size && size.width > 0 && size.height > 0 ? size : undefined;
}
