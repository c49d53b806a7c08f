import { type Level, levelsOf, partOf, type Tile } from '../tile-grid.ts';

/** Levels of at most so many pixels stay: of a large image the third level and all below, 20 MB. */
const MOST_KEPT = 4_000_000;

/** Makes and cuts pixels; the worker's are the browser's own. */
export interface PixelTools<Pixels> {
  decode(file: Blob): Promise<Pixels>;
  sizeOf(pixels: Pixels): Level;
  /** The same picture in this size. */
  shrink(pixels: Pixels, to: Level): Pixels;
  cut(pixels: Pixels, left: number, top: number, width: number, height: number): Promise<Pixels>;
  free(pixels: Pixels): void;
}

/** One image in its levels. The small ones stay; the large ones are made again from the file when they are wanted. */
export interface ImageLevels<Pixels> {
  readonly size: Level;
  cut(tile: Tile): Promise<Pixels | undefined>;
  /** Lets the large levels go: they take most of the memory. */
  rest(): void;
  close(): void;
}

/**
 * Decodes an image and makes its small levels.
 *
 * @throws whatever the decoder throws at a file it cannot read
 */
export async function openLevels<Pixels>(file: Blob, tools: PixelTools<Pixels>): Promise<ImageLevels<Pixels>> {
  const held = new Map<number, Pixels>();
  const first = await tools.decode(file);
  const size = tools.sizeOf(first);
  const levels = levelsOf(size.width, size.height);
  const isSmall = (level: number) => {
    const { width, height } = levels[level] ?? size;
    return width * height <= MOST_KEPT;
  };

  /** Shrinks step by step from a finer level; keeps the small levels and, of the large ones, `to`. */
  const make = (source: Pixels, from: number, to: number) => {
    const keep = (pixels: Pixels, level: number) => {
      if (isSmall(level) || level === to) held.set(level, pixels);
    };
    keep(source, from);
    let above = source;
    levels.slice(from + 1, to + 1).forEach((level, index) => {
      const pixels = tools.shrink(above, level);
      if (held.get(from + index) !== above) tools.free(above);
      keep(pixels, from + index + 1);
      above = pixels;
    });
  };
  make(first, 0, levels.length - 1);

  const hold = async (wanted: number) => {
    const finer = [...held.keys()].filter((level) => level < wanted);
    const from = finer.length > 0 ? Math.max(...finer) : 0;
    make(held.get(from) ?? (await tools.decode(file)), from, wanted);
  };

  return {
    size,
    async cut(tile) {
      const level = levels[tile.level];
      if (!level) return undefined;
      if (!held.has(tile.level)) await hold(tile.level);
      const pixels = held.get(tile.level);
      const part = partOf(tile, level);
      const [left, top] = [Math.round(part.left * level.width), Math.round(part.top * level.height)];
      const width = Math.round(part.right * level.width) - left;
      const height = Math.round(part.bottom * level.height) - top;
      return pixels && width > 0 && height > 0 ? tools.cut(pixels, left, top, width, height) : undefined;
    },
    rest() {
      for (const [level, pixels] of held) {
        if (isSmall(level)) continue;
        held.delete(level);
        tools.free(pixels);
      }
    },
    close() {
      for (const pixels of held.values()) tools.free(pixels);
      held.clear();
    },
  };
}
