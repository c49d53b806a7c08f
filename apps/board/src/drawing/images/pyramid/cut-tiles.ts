import type { Stop } from '@loopwright/document';
import type { Tile } from '../tile-grid.ts';
import type { Answer, BlobPlace, Question } from './contract.ts';
import type { ImageLevels } from './levels.ts';

/** Milliseconds without a wish after which the large levels are let go. */
const REST_AFTER = 15_000;

export interface CutterParts {
  readonly open: (place: BlobPlace) => Promise<ImageLevels<ImageBitmap>>;
  readonly tell: (answer: Answer) => void;
  readonly later: (milliseconds: number, work: () => void) => Stop;
}

/**
 * Answers the page: opens images one after the other and cuts the tiles that are wanted now, one by one,
 * so that newer wishes come in between. Large levels are held of one image at a time.
 */
export function cutTiles({ open, tell, later }: CutterParts): (question: Question) => void {
  const images = new Map<string, ImageLevels<ImageBitmap>>();
  const opening: { readonly blob: string; readonly place: BlobPlace }[] = [];
  const wanted: Tile[] = [];
  const closed = new Set<string>();
  let busy = false;
  let last: string | undefined;
  let stopWaiting: Stop = () => undefined;

  const rest = (but?: string) => {
    for (const [blob, levels] of images) if (blob !== but) levels.rest();
  };
  const openNext = async (blob: string, place: BlobPlace) => {
    try {
      const levels = await open(place);
      if (closed.has(blob)) return levels.close();
      images.set(blob, levels);
      tell({ kind: 'opened', blob, widthPixels: levels.size.width, heightPixels: levels.size.height });
    } catch {
      tell({ kind: 'missing', blob }); // told, not lost: the page draws where it should lie
    }
  };
  const cutNext = async (tile: Tile) => {
    if (last !== tile.blob) rest(tile.blob);
    last = tile.blob;
    try {
      const pixels = await images.get(tile.blob)?.cut(tile);
      if (pixels) tell({ kind: 'tile', tile, pixels });
    } catch {
      tell({ kind: 'missing', blob: tile.blob });
    }
  };
  const work = async () => {
    if (busy) return;
    busy = true;
    stopWaiting();
    for (;;) {
      const image = opening.shift();
      const tile = image ? undefined : wanted.shift();
      if (image) await openNext(image.blob, image.place);
      else if (tile) await cutNext(tile);
      else break;
    }
    busy = false;
    stopWaiting = later(REST_AFTER, rest);
  };

  return (question) => {
    if (question.ask === 'open') {
      closed.delete(question.blob);
      opening.push(question);
    }
    if (question.ask === 'tiles') wanted.splice(0, wanted.length, ...question.tiles);
    if (question.ask === 'close') {
      closed.add(question.blob);
      images.get(question.blob)?.close();
      images.delete(question.blob);
    }
    void work();
  };
}
