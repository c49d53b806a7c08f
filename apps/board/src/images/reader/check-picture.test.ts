import { expect, test } from 'vitest';
import { checkPicture, type PictureTools } from './check-picture.ts';
import type { Answer } from './contract.ts';

const LIMITS = { mostImageBytes: 10_000, mostImagePixels: 1_000_000, mostImageSide: 5000 };

const letters = (text: string) => [...text].map((letter) => letter.charCodeAt(0));
/** ISO/IEC 15948, 5.3: length, name, data, a checksum that nobody looks at before the decoder. */
const chunk = (name: string, data: readonly number[]) => [0, 0, 0, data.length, ...letters(name), ...data, 0, 0, 0, 0];

/** ISO/IEC 15948, 5.2 and 11.2: four pixels in three colours. */
const pngOf = (depth: 8 | 16) =>
  new Blob([
    new Uint8Array([
      ...[0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a],
      ...chunk('IHDR', [0, 0, 0, 4, 0, 0, 0, 1, depth, 2, 0, 0, 0]),
      ...chunk('IDAT', [7, 7, 7, 7, 7, 7, 7]),
      ...chunk('IEND', []),
    ]),
  ]);

/** ITU-T T.81, B.2: a frame of `colours`, a scan and the end. */
const jpegOf = (colours: number) =>
  new Blob([
    new Uint8Array([
      ...[
        0xff,
        0xd8,
        0xff,
        0xc0,
        0,
        8 + colours * 3,
        8,
        0,
        1,
        0,
        4,
        colours,
        ...new Array<number>(colours * 3).fill(1),
      ],
      ...[0xff, 0xda, 0, 8, 1, 1, 0, 0, 63, 0, 7, 7, 7, 0xff, 0xd9],
    ]),
  ]);

function paperTools(change: Partial<PictureTools> = {}) {
  const done: string[] = [];
  const tools: PictureTools = {
    decodedSize: async () => {
      done.push('decoded');
      return { width: 4, height: 1 };
    },
    convert: async (_file, type) => {
      done.push(`converted to ${type}`);
      return pngOf(8);
    },
    hash: async () => 'f'.repeat(64),
    ...change,
  };
  return { tools, done };
}

async function check(file: Blob, { tools } = paperTools()) {
  const told: Answer[] = [];
  const answer = await checkPicture(file, LIMITS, tools, (one) => told.push(one));
  return { answer, doing: told.map((one) => one.kind === 'doing' && one.doing) };
}

test('a sound picture is decoded once and kept as it is', async () => {
  const [file, paper] = [pngOf(8), paperTools()];
  const { answer, doing } = await check(file, paper);
  expect(doing).toEqual(['reading', 'decoding']);
  expect(paper.done).toEqual(['decoded']);
  expect(answer).toEqual({
    kind: 'ready',
    picture: { file, type: 'image/png', widthPixels: 4, heightPixels: 1, orientation: 1, hash: 'f'.repeat(64) },
  });
});

test('what its header refuses is never decoded', async () => {
  const bomb = new Uint8Array(await pngOf(8).arrayBuffer());
  new DataView(bomb.buffer).setUint32(16, 4900);
  new DataView(bomb.buffer).setUint32(20, 4900);
  const zip = new Blob(['PK\u0003\u0004 a zip under the name of a picture']);
  for (const file of [new Blob([bomb]), zip, new Blob([]), pngOf(8).slice(0, 60), new Blob(['x'.repeat(20_000)])]) {
    const paper = paperTools();
    const { answer } = await check(file, paper);
    expect(answer).toMatchObject({ kind: 'refused', why: expect.stringMatching(/: |\.$/) });
    expect(paper.done).toEqual([]);
  }
});

test('a picture that does not decode is refused before it is sent', async () => {
  const { answer } = await check(pngOf(8), paperTools({ decodedSize: () => Promise.reject(new Error('broken')) }));
  expect(answer).toMatchObject({ kind: 'refused', why: expect.stringContaining('damaged') });
});

test('a file that is gone from the disk meanwhile, or never was one, is told', async () => {
  const gone = pngOf(8);
  gone.slice = () => {
    throw new DOMException('The file could not be found.', 'NotFoundError');
  };
  const paper = paperTools();
  expect((await check(gone, paper)).answer).toEqual({
    kind: 'refused',
    why: 'This file can no longer be read from the disk: drop it again.',
  });
  expect(paper.done).toEqual([]);
});

test('a machine without the memory to work out a hash leaves that to the server', async () => {
  const { answer } = await check(pngOf(8), paperTools({ hash: () => Promise.reject(new Error('no memory')) }));
  expect(answer).toMatchObject({ kind: 'ready' });
  expect(answer).not.toMatchObject({ picture: { hash: expect.anything() } });
});

test('16 bits and four inks are turned into what every browser shows alike', async () => {
  const [deep, inks] = [paperTools(), paperTools()];
  expect((await check(pngOf(16), deep)).answer).toMatchObject({
    picture: { type: 'image/png', converted: expect.stringContaining('16 bits') },
  });
  expect((await check(jpegOf(4), inks)).answer).toMatchObject({
    picture: { type: 'image/jpeg', converted: expect.stringContaining('CMYK') },
  });
  expect([deep.done[0], inks.done[0]]).toEqual(['converted to image/png', 'converted to image/jpeg']);
  expect((await check(jpegOf(3))).answer).not.toMatchObject({ picture: { converted: expect.anything() } });
});

test('a machine that cannot convert says what to save instead', async () => {
  const { answer } = await check(pngOf(16), paperTools({ convert: () => Promise.reject(new Error('no canvas')) }));
  expect(answer).toMatchObject({ kind: 'refused', why: expect.stringContaining('8 bits a colour') });
});
