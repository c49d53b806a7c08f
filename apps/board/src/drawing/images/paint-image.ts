import type { ImageLayer } from '@loopwright/model';
import type { Piece } from './tile-store.ts';

/** Device pixels a piece reaches over its right and lower neighbour, so that no gap shines through between them. */
const OVER = 0.6;

type Pen = Pick<CanvasRenderingContext2D, 'transform' | 'drawImage' | 'save' | 'restore'>;

/**
 * Paints the pieces of an image where it lies, opaque.
 *
 * @param pen  in sheet units: metres, y turned over
 * @param share  device pixels for each pixel of the full image
 */
export function paintPieces(pen: Pen, layer: ImageLayer, pieces: readonly Piece[], share: number): void {
  const [a, b, c, d, e, f] = layer.placement;
  const { widthPixels, heightPixels } = layer;
  const over = OVER / share;
  pen.save();
  pen.transform(a, -d, b, -e, c, -f);
  for (const { pixels, source, part } of pieces) {
    const [left, top] = [part.left * widthPixels, part.top * heightPixels];
    const width = (part.right - part.left) * widthPixels + (part.right < 1 ? over : 0);
    const height = (part.bottom - part.top) * heightPixels + (part.bottom < 1 ? over : 0);
    pen.drawImage(pixels, source.left, source.top, source.width, source.height, left, top, width, height);
  }
  pen.restore();
}
