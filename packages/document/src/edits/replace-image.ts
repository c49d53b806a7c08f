import type { ImageLayer } from '@loopwright/model';
import type { Reading } from '../reading/reading.ts';
import { changeThing } from './change-thing.ts';
import type { EditNamed, EditWrites } from './edit-named.ts';
import { IMAGES } from './thing-kinds.ts';

/**
 * Other pixels in the same place: the corners of the new image lie where those of the old one lay, so that a finer scan
 * of the same plan, with more pixels, fits. Opacity, order and how its size is known stay.
 */
export function replaceImage(edit: EditNamed<'replace image'>, reading: Reading): EditWrites {
  const { blob, widthPixels, heightPixels, name } = edit;
  const old = reading.plan.site.images.find(({ id }) => id === edit.image);
  if (!old) return 'gone';
  if (!(widthPixels >= 1 && heightPixels >= 1)) return 'nothing';
  const to: Partial<ImageLayer> = {
    ...{ blob, widthPixels, heightPixels },
    placement: stretched(old, old.widthPixels / widthPixels, old.heightPixels / heightPixels),
    ...(name !== undefined && { name }),
  };
  return changeThing(IMAGES, reading, edit.image, to);
}

/** The placement of pixels that are so many times as wide and as high as before. */
function stretched({ placement }: ImageLayer, across: number, down: number): ImageLayer['placement'] {
  const [a, b, c, d, e, f] = placement;
  return [a * across, b * down, c, d * across, e * down, f];
}
