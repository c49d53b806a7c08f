import type { ImageLayer } from '@loopwright/model';
import type { Layer as KonvaLayer } from 'konva/lib/Layer.js';
import { memo, useEffect, useRef, useState } from 'react';
import type { Watched } from '../../live/slot.ts';
import { Layer } from '../konva-shapes.ts';
import type { CanvasSize, View } from '../site-transform.ts';
import { ImageFrame, ImageShape } from './ImageShape.tsx';
import type { BlobPlace } from './pyramid/contract.ts';
import { seenPart } from './seen-part.ts';
import { levelFor, type Tile, tilesIn } from './tile-grid.ts';
import { type Held, openPageTiles, type TileStore } from './tile-store.ts';

/** Where a board's blobs are. */
export type BlobAddress = (hash: string) => BlobPlace;

interface ImagesLayerProps {
  readonly images: readonly ImageLayer[];
  readonly view: View;
  readonly size: CanvasSize;
  readonly blobAddress: BlobAddress;
}

const NONE: ReadonlyMap<string, Held> = new Map();

/** The site images, lowest of all. A canvas of their own: drawn when the view moves or a tile comes, never by a drag. */
export const ImagesLayer = memo(function ImagesLayer({ images, view, size, blobAddress }: ImagesLayerProps) {
  const layer = useRef<KonvaLayer>(null);
  const store = useTileStore(blobAddress);
  const held = useOptional(store?.images, NONE);
  useEffect(() => store?.show(images.map(({ blob }) => blob)), [store, images]);
  useEffect(() => store?.want(wantedTiles(images, held, view, size)), [store, images, held, view, size]);
  useEffect(() => store?.arrived.onChange(() => layer.current?.batchDraw()), [store]);
  return (
    <Layer ref={layer} listening={false} x={view.x} y={view.y} scaleX={view.scale} scaleY={view.scale}>
      {images.map((image) => {
        const here = held.get(image.blob);
        return store && here?.kind === 'here' ? (
          <ImageShape key={image.id} layer={image} levels={here.levels} tiles={store} />
        ) : (
          <ImageFrame key={image.id} layer={image} held={here} />
        );
      })}
    </Layer>
  );
});

/** The tiles of this board, as long as it is shown; those that could not be fetched are tried again with the network. */
function useTileStore(blobAddress: BlobAddress): TileStore | undefined {
  const [store, setStore] = useState<TileStore>();
  useEffect(() => {
    const opened = openPageTiles(blobAddress);
    setStore(opened);
    window.addEventListener('online', opened.again);
    return () => {
      window.removeEventListener('online', opened.again);
      opened.close();
    };
  }, [blobAddress]);
  return store;
}

function useOptional<Value>(watched: Watched<Value> | undefined, none: Value): Value {
  const [value, setValue] = useState(none);
  useEffect(() => {
    if (!watched) return undefined;
    setValue(watched.get());
    return watched.onChange(() => setValue(watched.get()));
  }, [watched]);
  return value;
}

/** First every image's coarsest tile, so that there is always something to draw; then what is seen, the uppermost first. */
function wantedTiles(
  images: readonly ImageLayer[],
  held: ReadonlyMap<string, Held>,
  view: View,
  size: CanvasSize,
): readonly Tile[] {
  const [whole, seen]: [Tile[], Tile[]] = [[], []];
  const ratio = window.devicePixelRatio;
  for (const image of [...images].reverse()) {
    const here = held.get(image.blob);
    if (here?.kind !== 'here') continue;
    whole.push({ blob: image.blob, level: here.levels.length - 1, column: 0, row: 0 });
    const part = seenPart(image, view, size);
    if (!part) continue;
    const at = levelFor(here.levels, part.share * ratio);
    const level = here.levels[at];
    if (level) seen.push(...tilesIn(image.blob, at, level, part.part));
  }
  return [...whole, ...seen];
}
