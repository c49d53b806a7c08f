import type { ImageLayer } from '@loopwright/model';
import { useEffect, useState } from 'react';
import { makePyramid, type Pyramid } from './image-pyramid.ts';

/** Where a board's blobs are fetched from. */
export type BlobAddress = (hash: string) => string;

/** The images of a site as they arrive; one that cannot be loaded is left out and named in `missing`. */
export function useSiteImages(layers: readonly ImageLayer[], addressOf: BlobAddress) {
  const [loaded, setLoaded] = useState<ReadonlyMap<string, Pyramid | 'missing'>>(new Map());
  useEffect(() => {
    let here = true;
    const keep = (blob: string, pyramid: Pyramid | 'missing') => {
      if (here) setLoaded((before) => new Map([...before, [blob, pyramid]]));
    };
    for (const { blob } of layers) {
      const image = new Image();
      image.onload = () => keep(blob, makePyramid(image));
      image.onerror = () => keep(blob, 'missing');
      image.src = addressOf(blob);
    }
    return () => {
      here = false;
    };
  }, [layers, addressOf]);
  return loaded;
}
