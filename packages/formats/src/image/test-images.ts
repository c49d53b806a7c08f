/** Images for tests, written by hand from the standards, byte by byte. */
export const letters = (text: string) => [...text].map((letter) => letter.charCodeAt(0));
export const bytes = (...parts: readonly (number | readonly number[])[]) => new Uint8Array(parts.flat());

const four = (value: number) => [value >>> 24, (value >>> 16) & 255, (value >>> 8) & 255, value & 255];
const two = (value: number) => [(value >> 8) & 255, value & 255];
const fourLittle = (value: number) => four(value).reverse();
const threeLittle = (value: number) => fourLittle(value).slice(0, 3);

const chunk = (name: string, data: readonly number[]) => [...four(data.length), ...letters(name), ...data, 0, 0, 0, 0];

export interface TestPng {
  readonly width: number;
  readonly height: number;
  readonly bits?: number;
  readonly colours?: number;
  /** Chunks before the pixels. */
  readonly before?: readonly (readonly [name: string, data: readonly number[]])[];
  readonly pixels?: number;
}

/** ISO/IEC 15948, 5.2, 5.3, 11.2. */
export function png({ width, height, bits = 8, colours = 2, before = [], pixels = 40 }: TestPng): Uint8Array {
  return bytes(
    [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a],
    chunk('IHDR', [...four(width), ...four(height), bits, colours, 0, 0, 0]),
    ...before.map(([name, data]) => chunk(name, data)),
    chunk('IDAT', new Array<number>(pixels).fill(7)),
    chunk('IEND', []),
  );
}

/** Exif 2.32: a TIFF header and a directory of one entry, the orientation. */
export const exif = (orientation: number) => [
  ...[0x4d, 0x4d, 0, 42, ...four(8), ...two(1)],
  ...[0x01, 0x12, ...two(3), ...four(1), ...two(orientation), 0, 0],
  ...four(0),
];

export interface TestJpeg {
  readonly width: number;
  readonly height: number;
  readonly bits?: number;
  readonly colours?: number;
  readonly frame?: number;
  readonly orientation?: number;
  readonly pixels?: number;
  /** What follows the end of the image. */
  readonly after?: readonly number[];
}

/** ITU-T T.81, B.2: an application segment, tables, the frame header, a scan and the end. */
export function jpeg({
  width,
  height,
  bits = 8,
  colours = 3,
  frame = 0xc0,
  pixels = 40,
  ...rest
}: TestJpeg): Uint8Array {
  const orientation = rest.orientation === undefined ? [] : [...letters('Exif'), 0, 0, ...exif(rest.orientation)];
  const part = (marker: number, data: readonly number[]) => [0xff, marker, ...two(data.length + 2), ...data];
  return bytes(
    [0xff, 0xd8],
    part(0xe0, [...letters('JFIF'), 0]),
    orientation.length > 0 ? part(0xe1, orientation) : [],
    part(0xc4, [9]),
    part(frame, [bits, ...two(height), ...two(width), colours, ...new Array<number>(colours * 3).fill(1)]),
    part(0xda, [1, 1, 0, 0, 63, 0]),
    new Array<number>(pixels).fill(7),
    [0xff, 0x00, 0xff, 0xd0, 7],
    [0xff, 0xd9],
    [...(rest.after ?? [])],
  );
}

const riff = (...chunks: readonly (readonly [name: string, data: readonly number[]])[]) => {
  const data = chunks.flatMap(([name, of]) => [
    ...letters(name),
    ...fourLittle(of.length),
    ...of,
    ...(of.length % 2 ? [0] : []),
  ]);
  return bytes(letters('RIFF'), fourLittle(data.length + 4), letters('WEBP'), data);
};

/** RFC 9649, 2.5 to 2.7, each 320 × 240. */
export const LOSSY_WEBP = riff(['VP8 ', [0, 0, 0, 0x9d, 0x01, 0x2a, 0x40, 0x01, 0xf0, 0x00, 7, 7]]);
export const LOSSLESS_WEBP = riff(['VP8L', [0x2f, 0x3f, 0xc1, 0x3b, 0, 0, 7, 7, 7, 7]]);
export const extendedWebp = (flags: number, orientation = 1) =>
  riff(
    ['VP8X', [flags, 0, 0, 0, ...threeLittle(319), ...threeLittle(239)]],
    ['VP8 ', [0, 0, 0, 0x9d, 0x01, 0x2a, 0x40, 0x01, 0xf0, 0x00, 7]],
    ['EXIF', exif(orientation)],
  );
