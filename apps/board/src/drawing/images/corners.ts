import type { ImageLayer, SitePoint } from '@loopwright/model';

/** The site point of a pixel, counted from the upper left corner of the image. */
export function sitePointOf({ placement }: Pick<ImageLayer, 'placement'>, column: number, row: number): SitePoint {
  const [a, b, c, d, e, f] = placement;
  return { x: a * column + b * row + c, y: d * column + e * row + f };
}

/** The corners of an image on the ground: upper left, upper right, lower right, lower left, as it is looked at. */
export function cornersOf(layer: ImageLayer): readonly SitePoint[] {
  const { widthPixels, heightPixels } = layer;
  return [
    sitePointOf(layer, 0, 0),
    sitePointOf(layer, widthPixels, 0),
    sitePointOf(layer, widthPixels, heightPixels),
    sitePointOf(layer, 0, heightPixels),
  ];
}
