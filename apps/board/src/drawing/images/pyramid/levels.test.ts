import { expect, test } from 'vitest';
import type { Level } from '../tile-grid.ts';
import { openLevels, type PixelTools } from './levels.ts';

interface Paper extends Level {
  readonly name: string;
}

/** Pixels on paper: it counts what is held and what was decoded. */
function paperTools(size: Level) {
  const held = new Set<Paper>();
  let decoded = 0;
  const make = (name: string, { width, height }: Level): Paper => {
    const paper = { name, width, height };
    held.add(paper);
    return paper;
  };
  const tools: PixelTools<Paper> = {
    decode: async () => {
      decoded += 1;
      return make('full', size);
    },
    sizeOf: ({ width, height }) => ({ width, height }),
    shrink: (pixels, to) => {
      if (!held.has(pixels)) throw new Error('shrinks what was let go');
      return make('level', to);
    },
    cut: async (pixels, left, top, width, height) => {
      if (!held.has(pixels)) throw new Error('cuts what was let go');
      return make(`${left} ${top}`, { width, height });
    },
    free: (pixels) => {
      if (!held.delete(pixels)) throw new Error('lets go twice');
    },
  };
  const megapixels = () => [...held].reduce((sum, { width, height }) => sum + width * height, 0) / 1e6;
  return { tools, megapixels, decoded: () => decoded, held };
}

const FILE = new Blob([]);
const tile = (level: number, column: number, row: number) => ({ blob: 'b', level, column, row });

test('of an image of 60 megapixels five stay once it is open', async () => {
  const paper = paperTools({ width: 9504, height: 6336 });
  const levels = await openLevels(FILE, paper.tools);
  expect(levels.size).toEqual({ width: 9504, height: 6336 });
  expect(paper.megapixels()).toBeLessThan(5.1);
  expect(paper.decoded()).toBe(1);
});

test('a large level is made when it is wanted, once for all its tiles, and let go at rest', async () => {
  const paper = paperTools({ width: 9504, height: 6336 });
  const levels = await openLevels(FILE, paper.tools);
  const before = paper.held.size;
  const cut = await levels.cut(tile(0, 18, 12));
  expect(cut).toMatchObject({ name: '9216 6144', width: 288, height: 192 }); // the corner: what is left of 9504 × 6336
  await levels.cut(tile(0, 0, 0));
  await levels.cut(tile(1, 0, 0));
  expect(paper.decoded()).toBe(2);
  expect(paper.megapixels()).toBeLessThan(5 + 61 + 16);
  levels.rest();
  expect(paper.held.size).toBe(before + 3);
});

test('small levels are cut without decoding again', async () => {
  const paper = paperTools({ width: 9504, height: 6336 });
  const levels = await openLevels(FILE, paper.tools);
  expect(await levels.cut(tile(5, 0, 0))).toMatchObject({ width: 297, height: 198 });
  expect(await levels.cut(tile(2, 0, 0))).toMatchObject({ width: 512, height: 512 });
  expect(await levels.cut(tile(9, 0, 0))).toBeUndefined();
  expect(await levels.cut(tile(5, 1, 0))).toBeUndefined();
  expect(paper.decoded()).toBe(1);
});

test('a small image is held once, and nothing is held after it is closed', async () => {
  const paper = paperTools({ width: 300, height: 200 });
  const levels = await openLevels(FILE, paper.tools);
  expect(paper.held.size).toBe(1);
  levels.rest();
  levels.close();
  expect(paper.held.size).toBe(0);
});
