import { encode } from 'fast-png';
import { expect, test } from 'vitest';
import { imageSizeOf } from './image-size.ts';

const letters = (text: string) => [...text].map((letter) => letter.charCodeAt(0));
const bytes = (...parts: readonly (number | readonly number[])[]) => new Uint8Array(parts.flat());
const PNG = [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 0, 0, 13, ...letters('IHDR')];
const webp = (chunk: string, ...rest: readonly number[]) =>
  bytes(letters('RIFF'), [9, 0, 0, 0], letters(`WEBP${chunk}`), [9, 0, 0, 0], rest);

test('the size of an image that another library wrote', () => {
  const png = encode({ width: 7, height: 3, data: new Uint8Array(7 * 3 * 4), channels: 4, depth: 8 });
  expect(imageSizeOf(png)).toEqual({ width: 7, height: 3 });
});

// Written by hand from ISO/IEC 15948 (PNG), ITU-T T.81 (JPEG) and RFC 9649 (WebP).
test.each([
  ['a PNG of ten thousand million pixels', bytes(PNG, [0, 1, 0x86, 0xa0, 0, 1, 0x86, 0xa0]), 100_000, 100_000],
  [
    'a JPEG behind an application segment',
    bytes([0xff, 0xd8, 0xff, 0xe0, 0, 4, 1, 2, 0xff, 0xc4, 0, 3, 9, 0xff, 0xc2, 0, 11, 8, 0x01, 0x00, 0x02, 0x00, 3]),
    512,
    256,
  ],
  ['a lossy WebP', webp('VP8 ', 0, 0, 0, 0x9d, 0x01, 0x2a, 0x40, 0x01, 0xf0, 0x00), 320, 240],
  ['a lossless WebP', webp('VP8L', 0x2f, 0x3f, 0xc1, 0x3b, 0, 0, 0, 0, 0, 0), 320, 240],
  ['an extended WebP', webp('VP8X', 0, 0, 0, 0, 0x3f, 1, 0, 0xef, 0, 0), 320, 240],
])('%s', (_what, image, width, height) => {
  expect(imageSizeOf(image)).toEqual({ width, height });
});

test.each([
  ['nothing', bytes()],
  ['a PNG that breaks off', bytes(PNG)],
  ['a PNG without its header', bytes(PNG.slice(0, 8), letters('<script>alert(1)</script>'))],
  ['a PNG of no height', bytes(PNG, [0, 0, 0, 9, 0, 0, 0, 0])],
  ['a JPEG that breaks off', bytes([0xff, 0xd8, 0xff, 0xe0, 0xff, 0xff, 1])],
  ['a JPEG whose segment has no length', bytes([0xff, 0xd8, 0xff, 0xe0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0])],
  ['a drawing that is a program', bytes(letters('<svg onload="x()"/>'))],
])('%s says no size', (_what, image) => {
  expect(imageSizeOf(image)).toBeUndefined();
});
