import { expect, test } from 'vitest';
import type { Tile } from '../tile-grid.ts';
import type { Answer } from './contract.ts';
import { cutTiles } from './cut-tiles.ts';
import type { ImageLevels } from './levels.ts';

const at = (blob: string, column: number): Tile => ({ blob, level: 0, column, row: 0 });
const settled = async () => {
  for (let turn = 0; turn < 20; turn++) await Promise.resolve();
};

/** Images on paper: tiles are cut when the test says so. */
function paperImages() {
  const told: Answer[] = [];
  const rested: string[] = [];
  const cuts: { readonly tile: Tile; readonly done: () => void }[] = [];
  const timers: (() => void)[] = [];
  const levelsOf = (blob: string): ImageLevels<ImageBitmap> => ({
    size: { width: 9, height: 9 },
    cut: (tile) => new Promise((settle) => cuts.push({ tile, done: () => settle(undefined) })),
    rest: () => rested.push(blob),
    close: () => undefined,
  });
  const hear = cutTiles({
    open: async (place) => {
      if (place === '/gone') throw new Error('404');
      return levelsOf(String(place));
    },
    tell: (answer) => told.push(answer),
    later: (_milliseconds, work) => {
      timers.push(work);
      return () => undefined;
    },
  });
  return { hear, told, rested, cuts, timers };
}

test('newer wishes take the place of those not cut yet', async () => {
  const { hear, cuts } = paperImages();
  hear({ ask: 'open', blob: 'a', place: 'a' });
  await settled();
  hear({ ask: 'tiles', tiles: [at('a', 0), at('a', 1), at('a', 2)] });
  await settled();
  hear({ ask: 'tiles', tiles: [at('a', 7)] });
  cuts[0]?.done();
  await settled();
  expect(cuts.map(({ tile }) => tile.column)).toEqual([0, 7]);
});

test('large levels are held of one image at a time, and let go when nobody wants any', async () => {
  const { hear, cuts, rested, timers } = paperImages();
  for (const blob of ['a', 'b']) hear({ ask: 'open', blob, place: blob });
  hear({ ask: 'tiles', tiles: [at('a', 0), at('b', 0)] });
  await settled();
  cuts[0]?.done();
  await settled();
  expect(rested).toEqual(['b', 'a']);
  cuts[1]?.done();
  await settled();
  timers.at(-1)?.();
  expect(rested).toEqual(['b', 'a', 'a', 'b']);
});

test('an image that cannot be had is told, and the others come all the same', async () => {
  const { hear, told } = paperImages();
  hear({ ask: 'open', blob: 'gone', place: '/gone' });
  hear({ ask: 'open', blob: 'a', place: 'a' });
  await settled();
  expect(told).toEqual([
    { kind: 'missing', blob: 'gone' },
    { kind: 'opened', blob: 'a', widthPixels: 9, heightPixels: 9 },
  ]);
});
