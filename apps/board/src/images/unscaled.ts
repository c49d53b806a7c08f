import type { ImageLayer } from '@loopwright/model';

/** The images that lie at a guessed size, the lowest first: what is drawn over them has no known length. */
export function unscaled(images: readonly ImageLayer[]): readonly ImageLayer[] {
  return images.filter(({ scaledBy }) => scaledBy === 'guess');
}
