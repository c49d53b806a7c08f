import type { Tile } from '../tile-grid.ts';

/** Where an image is: an address, or the file itself while this page has it. */
export type BlobPlace = string | Blob;

/** What crosses between page and worker. Pixels are handed over, not copied. */
export type Question =
  /** An image of the board; fetched once. */
  | { readonly ask: 'open'; readonly blob: string; readonly place: BlobPlace }
  /** The tiles that are wanted now, the most urgent first: those asked for before and not cut yet are wanted no more. */
  | { readonly ask: 'tiles'; readonly tiles: readonly Tile[] }
  | { readonly ask: 'close'; readonly blob: string };

export type Answer =
  | { readonly kind: 'opened'; readonly blob: string; readonly widthPixels: number; readonly heightPixels: number }
  | { readonly kind: 'tile'; readonly tile: Tile; readonly pixels: ImageBitmap }
  /** It could not be fetched or not be decoded. */
  | { readonly kind: 'missing'; readonly blob: string };
