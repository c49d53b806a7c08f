import { expect, test } from 'vitest';
import { coarserTile, levelFor, levelsOf, partOf, TILE, tilesIn } from './tile-grid.ts';

const ALL = { left: 0, top: 0, right: 1, bottom: 1 };

test('an image of 60 megapixels has levels of half the sides, down to a single tile', () => {
  const levels = levelsOf(9504, 6336);
  expect(levels.map(({ width, height }) => [width, height])).toEqual([
    [9504, 6336],
    [4752, 3168],
    [2376, 1584],
    [1188, 792],
    [594, 396],
    [297, 198],
  ]);
  expect(levelsOf(300, 200)).toHaveLength(1);
  expect(levelsOf(30_000, 1).at(-1)).toEqual({ width: 469, height: 1 });
});

test('the level follows the size of its pixels on the screen', () => {
  const levels = levelsOf(9504, 6336);
  expect([4, 1, 0.7, 0.5, 0.25, 0.001].map((share) => levelFor(levels, share))).toEqual([0, 0, 0, 1, 2, 5]);
});

test('tiles cover their level once, without a gap', () => {
  const level = { width: 1188, height: 792 };
  const tiles = tilesIn('blob', 3, level, ALL);
  expect(tiles).toHaveLength(3 * 2);
  const area = tiles.reduce((sum, tile) => {
    const { left, top, right, bottom } = partOf(tile, level);
    return sum + (right - left) * (bottom - top);
  }, 0);
  expect(area).toBeCloseTo(1, 12);
});

test('only tiles that touch what is seen are asked for', () => {
  const level = { width: 10 * TILE, height: 10 * TILE };
  const tiles = tilesIn('blob', 0, level, { left: 0.25, top: 0, right: 0.35, bottom: 0.1 });
  expect(tiles.map(({ column, row }) => [column, row])).toEqual([
    [2, 0],
    [3, 0],
  ]);
});

test('a coarser tile lies under every tile', () => {
  const levels = levelsOf(9504, 6336);
  const [fine, coarse] = [levels[1], levels[3]];
  if (!fine || !coarse) throw new Error('a large image has these levels');
  for (const tile of tilesIn('blob', 1, fine, ALL)) {
    const under = coarserTile('blob', 3, coarse, partOf(tile, fine));
    const [small, large] = [partOf(tile, fine), partOf(under, coarse)];
    const middle = [(small.left + small.right) / 2, (small.top + small.bottom) / 2] as const;
    expect(large.left <= middle[0] && middle[0] <= large.right).toBe(true);
    expect(large.top <= middle[1] && middle[1] <= large.bottom).toBe(true);
  }
});
