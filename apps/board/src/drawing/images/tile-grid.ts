/** Sides of a tile, in pixels: a megabyte each, so that one is fetched and drawn within a picture. */
export const TILE = 512;

/** The size of one level of an image. Level 0 has all its pixels, each further one half as many a side. */
export interface Level {
  readonly width: number;
  readonly height: number;
}

/** One tile of one image, known by its blob. */
export interface Tile {
  readonly blob: string;
  readonly level: number;
  readonly column: number;
  readonly row: number;
}

/** A part of an image, in shares of its sides: the same on every level. */
export interface Part {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** The levels of an image, down to the one that is a single tile. */
export function levelsOf(widthPixels: number, heightPixels: number): readonly Level[] {
  const levels: Level[] = [{ width: widthPixels, height: heightPixels }];
  let [width, height] = [widthPixels, heightPixels];
  while (Math.max(width, height) > TILE) {
    [width, height] = [Math.max(1, Math.ceil(width / 2)), Math.max(1, Math.ceil(height / 2))];
    levels.push({ width, height });
  }
  return levels;
}

/** How far below one pixel of the screen a pixel of the level may fall before a coarser level will do. */
const GENEROSITY = 0.3;

/**
 * The level that is drawn: between 0.8 and 1.6 of its pixels on a pixel of the screen.
 *
 * @param share  pixels of the screen for each pixel of the full image
 */
export function levelFor(levels: readonly Level[], share: number): number {
  const wanted = Math.floor(-Math.log2(share) + GENEROSITY);
  return Math.max(0, Math.min(levels.length - 1, wanted));
}

/** The key of a tile in a map. */
export function keyOf({ blob, level, column, row }: Tile): string {
  return `${blob} ${level} ${column} ${row}`;
}

/** The tiles of a level that touch a part of the image, row by row. */
export function tilesIn(blob: string, level: number, { width, height }: Level, part: Part): readonly Tile[] {
  const columns = range(part.left * width, part.right * width, width);
  const rows = range(part.top * height, part.bottom * height, height);
  return rows.flatMap((row) => columns.map((column) => ({ blob, level, column, row })));
}

function range(from: number, to: number, size: number): readonly number[] {
  const last = Math.ceil(size / TILE) - 1;
  const first = Math.max(0, Math.floor(from / TILE));
  const end = Math.min(last, Math.ceil(to / TILE) - 1);
  return end < first ? [] : Array.from({ length: end - first + 1 }, (_, index) => first + index);
}

/** What a tile shows of its image. */
export function partOf({ column, row }: Pick<Tile, 'column' | 'row'>, { width, height }: Level): Part {
  return {
    left: (column * TILE) / width,
    top: (row * TILE) / height,
    right: Math.min(1, ((column + 1) * TILE) / width),
    bottom: Math.min(1, ((row + 1) * TILE) / height),
  };
}

/** The tile of a coarser level under the middle of a part. */
export function coarserTile(blob: string, level: number, { width, height }: Level, part: Part): Tile {
  const column = Math.floor((((part.left + part.right) / 2) * width) / TILE);
  const row = Math.floor((((part.top + part.bottom) / 2) * height) / TILE);
  return { blob, level, column, row };
}
