import type { ImageLayer, SitePoint } from '@loopwright/model';
import type { Selection } from '../../board/parts.ts';
import { shortName } from '../../reading/short-name.ts';

/** A place on an image, in its own pixels from the upper left corner. */
export interface PixelPoint {
  readonly column: number;
  readonly row: number;
}

/** The pixel of an image that lies at a site point; `undefined` when the image has no area. */
export function pixelAt({ placement }: Pick<ImageLayer, 'placement'>, at: SitePoint): PixelPoint | undefined {
  const [a, b, c, d, e, f] = placement;
  const area = a * e - b * d;
  const [x, y] = [at.x - c, at.y - f];
  const pixel = { column: (e * x - b * y) / area, row: (a * y - d * x) / area };
  return Number.isFinite(pixel.column + pixel.row) ? pixel : undefined;
}

function lies(image: ImageLayer, at: SitePoint): boolean {
  const pixel = pixelAt(image, at);
  if (!pixel) return false;
  const { column, row } = pixel;
  return column >= 0 && row >= 0 && column <= image.widthPixels && row <= image.heightPixels;
}

/** The image a person means: the one picked out, else the uppermost under the pointer, else the only one there is. */
export function imageMeant(
  images: readonly ImageLayer[],
  { thing }: Selection,
  at: SitePoint | undefined,
): ImageLayer | undefined {
  const chosen = thing?.kind === 'image' ? images.find(({ id }) => id === thing.id) : undefined;
  if (chosen) return chosen;
  const under = at && images.findLast((image) => lies(image, at));
  return under ?? (images.length === 1 ? images[0] : undefined);
}

/** What an image is called. */
export const imageName = ({ name }: ImageLayer) => (name === undefined ? 'the picture' : shortName(name));
