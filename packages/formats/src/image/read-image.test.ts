import { expect, test } from 'vitest';
import { type ByteSource, bytesAsSource } from './byte-source.ts';
import type { ImageLimits } from './image-header.ts';
import { imageTypeOf, readImage } from './read-image.ts';
import { bytes, exif, extendedWebp, jpeg, LOSSLESS_WEBP, LOSSY_WEBP, letters, png } from './test-images.ts';

const LIMITS: ImageLimits = { mostImageBytes: 10_000_000, mostImagePixels: 64_000_000, mostImageSide: 30_000 };
const read = (image: Uint8Array, limits = LIMITS) => readImage(bytesAsSource(image), limits);
const faultOf = async (image: Uint8Array, limits = LIMITS) => {
  const reading = await read(image, limits);
  return reading.kind === 'fault' ? reading.fault : reading.header;
};

// Signatures: PNG (ISO/IEC 15948, 5.2), JPEG (ITU-T T.81), WebP (RFC 9649, 2.4).
test.each([
  [[0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a], 'image/png'],
  [[0xff, 0xd8, 0xff, 0xe0], 'image/jpeg'],
  [[0x52, 0x49, 0x46, 0x46, 9, 9, 9, 9, 0x57, 0x45, 0x42, 0x50], 'image/webp'],
  [[0x47, 0x49, 0x46, 0x38], undefined],
  [[0x52, 0x49, 0x46, 0x46], undefined],
])('the first bytes %j say %s', (first, type) => {
  expect(imageTypeOf(new Uint8Array(first))).toBe(type);
});

test('a PNG says its size and bits', async () => {
  expect(await read(png({ width: 9504, height: 6336, bits: 16 }))).toEqual({
    kind: 'image',
    header: { type: 'image/png', widthPixels: 9504, heightPixels: 6336, bits: 16, inks: false, orientation: 1 },
  });
});

test('a JPEG says its size behind its other segments, and a CMYK one its inks', async () => {
  expect(await faultOf(jpeg({ width: 512, height: 256, frame: 0xc2 }))).toMatchObject({
    widthPixels: 512,
    heightPixels: 256,
    inks: false,
  });
  expect(await faultOf(jpeg({ width: 512, height: 256, colours: 4 }))).toMatchObject({ inks: true });
});

test.each([
  ['lossy', LOSSY_WEBP],
  ['lossless', LOSSLESS_WEBP],
  ['extended', extendedWebp(0)],
])('a %s WebP says its size', async (_kind, image) => {
  expect(await faultOf(image)).toMatchObject({ type: 'image/webp', widthPixels: 320, heightPixels: 240 });
});

// Exif 2.32, tag 0x0112: 1 to 4 lie as they are shown, 5 to 8 on their side.
test.each([1, 2, 3, 4, 5, 6, 7, 8])(
  'orientation %i of a picture decides which side is its width',
  async (orientation) => {
    const shown = orientation < 5 ? { widthPixels: 40, heightPixels: 30 } : { widthPixels: 30, heightPixels: 40 };
    expect(await faultOf(jpeg({ width: 40, height: 30, orientation }))).toMatchObject({ ...shown, orientation });
    expect(await faultOf(png({ width: 40, height: 30, before: [['eXIf', exif(orientation)]] }))).toMatchObject(shown);
  },
);

test('an orientation that makes no sense is none', async () => {
  for (const odd of [0, 9, 65_535])
    expect(await faultOf(jpeg({ width: 40, height: 30, orientation: odd }))).toMatchObject({ orientation: 1 });
  const torn = exif(6).slice(0, 12);
  expect(await faultOf(png({ width: 40, height: 30, before: [['eXIf', torn]] }))).toMatchObject({ orientation: 1 });
});

test.each([
  ['nothing', bytes(), 'empty'],
  ['a zip under the name of a picture', bytes(letters('PK'), [3, 4], new Array<number>(40).fill(0)), 'not an image'],
  ['a drawing that is a program', bytes(letters('<svg onload="x()"/>')), 'not an image'],
  [
    'a PNG without its header',
    bytes([...png({ width: 4, height: 4 })].slice(0, 8), letters('x'.repeat(40))),
    'not an image',
  ],
  ['a PNG with 3 bits of grey', png({ width: 4, height: 4, bits: 3, colours: 0 }), 'not an image'],
  ['a PNG of no height', png({ width: 9, height: 0 }), 'no pixels'],
  ['a PNG without pixels', png({ width: 9, height: 9 }).slice(0, 33), 'cut off'],
  ['a PNG that moves', png({ width: 9, height: 9, before: [['acTL', [0, 0, 0, 2, 0, 0, 0, 0]]] }), 'moving'],
  ['a JPEG of 12 bits', jpeg({ width: 9, height: 9, bits: 12, frame: 0xc1 }), 'coding'],
  ['a lossless JPEG', jpeg({ width: 9, height: 9, frame: 0xc3 }), 'coding'],
  ['an arithmetic JPEG', jpeg({ width: 9, height: 9, frame: 0xc9 }), 'coding'],
  ['a JPEG of two colours', jpeg({ width: 9, height: 9, colours: 2 }), 'not an image'],
  ['a JPEG whose segment has no length', bytes([0xff, 0xd8, 0xff, 0xe0, 0, 0, 0, 0, 0, 0]), 'not an image'],
  ['a WebP that moves', extendedWebp(0x02), 'moving'],
  [
    'a WebP of an unknown kind',
    bytes(letters('RIFF'), [22, 0, 0, 0], letters('WEBPXXXX'), new Array<number>(14).fill(1)),
    'not an image',
  ],
])('%s: %s', async (_what, image, fault) => {
  expect(await faultOf(image)).toBe(fault);
});

test('a picture that ends in the middle is cut off, wherever it ends', async () => {
  for (const whole of [png({ width: 9, height: 9 }), jpeg({ width: 9, height: 9, orientation: 6 }), extendedWebp(8, 6)])
    for (let end = 12; end < whole.length; end++) expect(await faultOf(whole.slice(0, end))).toBe('cut off');
});

test('what a camera puts behind the end of a JPEG does no harm', async () => {
  const after = new Array<number>(200_000).fill(3);
  expect(await faultOf(jpeg({ width: 9, height: 9, after }))).toMatchObject({ widthPixels: 9 });
});

test('limits of bytes, pixels and sides are told apart', async () => {
  expect(await faultOf(png({ width: 9, height: 9 }), { ...LIMITS, mostImageBytes: 50 })).toBe('too many bytes');
  expect(await faultOf(png({ width: 100_000, height: 100_000 }))).toBe('too long a side');
  expect(await faultOf(png({ width: 20_000, height: 20_000 }))).toBe('too many pixels');
  expect(await faultOf(png({ width: 9504, height: 6336 }))).toMatchObject({ widthPixels: 9504 });
});

test('a source is read by little, however much it holds', async () => {
  const image = png({ width: 9504, height: 6336, pixels: 3_000_000 });
  let fetched = 0;
  const counting: ByteSource = {
    size: image.length,
    read: async (at, length) => {
      fetched += length;
      return image.subarray(at, at + length);
    },
  };
  expect((await readImage(counting, LIMITS)).kind).toBe('image');
  expect(fetched).toBeLessThan(300_000);
});
