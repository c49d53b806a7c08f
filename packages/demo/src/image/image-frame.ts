import type { ImageLayer } from '@loopwright/model';

/** How the picture lies on the land: pixels, metres per pixel, and the site place of its top left corner. */
export const IMAGE_FRAME = { width: 1600, height: 1200, metresPerPixel: 0.85, left: -70, top: 890 } as const;

/** Site point of pixel (column, row), as an image layer keeps it. Rows run south. */
export const PLACEMENT: ImageLayer['placement'] = [
  IMAGE_FRAME.metresPerPixel,
  0,
  IMAGE_FRAME.left,
  0,
  -IMAGE_FRAME.metresPerPixel,
  IMAGE_FRAME.top,
];
