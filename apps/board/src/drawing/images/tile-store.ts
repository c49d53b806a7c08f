import { openSlot, type Watched } from '../../live/slot.ts';
import type { WorkerPort } from '../../workers/ask-once.ts';
import type { Answer, BlobPlace, Question } from './pyramid/contract.ts';
import { coarserTile, keyOf, type Level, levelsOf, type Part, partOf, type Tile } from './tile-grid.ts';

/** Pixels of tiles the page holds: a screen of 4K twice over, 130 MB. */
const MOST_PIXELS = 32_000_000;

/** An image of the board as far as it is here. */
export type Held =
  | { readonly kind: 'opening' }
  | { readonly kind: 'here'; readonly levels: readonly Level[] }
  | { readonly kind: 'missing' };

/** A piece to be drawn: pixels, which of them, and the part of the image they show. */
export interface Piece {
  readonly pixels: ImageBitmap;
  readonly source: { readonly left: number; readonly top: number; readonly width: number; readonly height: number };
  readonly part: Part;
}

/** The tiles of a board's images as they arrive; the ones drawn longest ago go first. */
export interface TileStore {
  /** By blob. */
  readonly images: Watched<ReadonlyMap<string, Held>>;
  /** Counts on whenever a tile arrives. */
  readonly arrived: Watched<number>;
  /** The blobs that are on the board now. */
  show(blobs: readonly string[]): void;
  /** Tries those again that could not be fetched. */
  again(): void;
  /** What is drawn now: what of it is not here yet is fetched. */
  want(tiles: readonly Tile[]): void;
  /** What there is for a tile: itself, or a part of a coarser one. */
  pieceFor(tile: Tile, levels: readonly Level[]): Piece | undefined;
  close(): void;
}

/** @param open  makes the worker, at the first image */
export function openTileStore(open: () => WorkerPort, placeOf: (blob: string) => BlobPlace): TileStore {
  const images = openSlot<ReadonlyMap<string, Held>>(new Map());
  const arrived = openSlot(0);
  const tiles = new Map<string, ImageBitmap>(); // in the order they were drawn last
  let pinned: ReadonlySet<string> = new Set();
  let worker: WorkerPort | undefined;

  const put = (blob: string, held: Held | undefined) => {
    const next = new Map(images.get());
    if (held) next.set(blob, held);
    else next.delete(blob);
    images.set(next);
  };
  const makeRoom = () => {
    let pixels = [...tiles.values()].reduce((sum, { width, height }) => sum + width * height, 0);
    for (const [key, tile] of tiles) {
      if (pixels <= MOST_PIXELS) return;
      if (pinned.has(key)) continue;
      pixels -= tile.width * tile.height;
      tile.close();
      tiles.delete(key);
    }
  };
  const hear = (answer: Answer) => {
    if (answer.kind === 'missing') return put(answer.blob, { kind: 'missing' });
    if (answer.kind === 'opened') {
      const levels = levelsOf(answer.widthPixels, answer.heightPixels);
      return put(answer.blob, { kind: 'here', levels });
    }
    const key = keyOf(answer.tile);
    tiles.get(key)?.close();
    tiles.set(key, answer.pixels);
    makeRoom();
    arrived.set(arrived.get() + 1);
  };
  /** A worker that broke, for want of memory say, is replaced when images are asked for again. */
  const broken = () => {
    worker?.terminate();
    worker = undefined;
    images.set(new Map([...images.get().keys()].map((blob) => [blob, { kind: 'missing' }])));
  };
  const ask = (question: Question) => {
    if (!worker) {
      worker = open();
      worker.onmessage = ({ data }: MessageEvent<Answer>) => hear(data);
      worker.onerror = broken;
    }
    worker.postMessage(question);
  };
  const openImage = (blob: string) => {
    put(blob, { kind: 'opening' });
    ask({ ask: 'open', blob, place: placeOf(blob) });
  };
  const forget = (blob: string) => {
    ask({ ask: 'close', blob });
    put(blob, undefined);
    for (const [key, tile] of tiles) {
      if (!key.startsWith(`${blob} `)) continue;
      tile.close();
      tiles.delete(key);
    }
  };

  return {
    images,
    arrived,
    show: (blobs) => {
      const [now, before] = [new Set(blobs), images.get()];
      for (const blob of before.keys()) if (!now.has(blob)) forget(blob);
      for (const blob of now) if (!before.has(blob)) openImage(blob);
    },
    again: () => {
      for (const [blob, held] of images.get()) if (held.kind === 'missing') openImage(blob);
    },
    want: (wanted) => {
      pinned = new Set(wanted.map(keyOf));
      const lacking = wanted.filter((tile) => !tiles.has(keyOf(tile)));
      if (worker || lacking.length > 0) ask({ ask: 'tiles', tiles: lacking });
    },
    pieceFor: (tile, levels) => {
      const level = levels[tile.level];
      if (!level) return undefined;
      const part = partOf(tile, level);
      for (let at = tile.level; at < levels.length; at++) {
        const under = levels[at];
        if (!under) return undefined;
        const from = at === tile.level ? tile : coarserTile(tile.blob, at, under, part);
        const key = keyOf(from);
        const pixels = tiles.get(key);
        if (!pixels) continue;
        tiles.delete(key);
        tiles.set(key, pixels); // drawn last
        return { pixels, part, source: sourceIn(pixels, partOf(from, under), part) };
      }
      return undefined;
    },
    close: () => {
      worker?.terminate();
      worker = undefined;
      for (const tile of tiles.values()) tile.close();
      tiles.clear();
    },
  };
}

/** The pixels of a tile that show a part of the image. */
function sourceIn({ width, height }: Level, whole: Part, part: Part): Piece['source'] {
  const [across, down] = [width / (whole.right - whole.left), height / (whole.bottom - whole.top)];
  const left = Math.max(0, (part.left - whole.left) * across);
  const top = Math.max(0, (part.top - whole.top) * down);
  return {
    left,
    top,
    width: Math.min(width - left, (part.right - part.left) * across),
    height: Math.min(height - top, (part.bottom - part.top) * down),
  };
}

/** The page's own store. */
export function openPageTiles(placeOf: (blob: string) => BlobPlace): TileStore {
  return openTileStore(() => new Worker(new URL('./pyramid/worker.ts', import.meta.url), { type: 'module' }), placeOf);
}
