import type { ImageLayer } from '@loopwright/model';
import { type CanvasSize, toSite, type View } from '../site-transform.ts';
import type { Part } from './tile-grid.ts';

/** How much of an image is on the canvas, and how large its pixels are there. */
export interface Seen {
  readonly part: Part;
  /** Canvas pixels for each pixel of the full image. */
  readonly share: number;
}

/** What is fetched beyond the edge of the canvas, as a share of its sides: a little way further is there already. */
const AHEAD = 0.1;

/**
 * The part of a placed image that is on the canvas; `undefined` when none is, or the placement has no area.
 *
 * Of a turned image it is the box around what is seen.
 */
export function seenPart(layer: ImageLayer, view: View, size: CanvasSize): Seen | undefined {
  const [a, b, c, d, e, f] = layer.placement;
  const area = a * e - b * d;
  if (!(Math.abs(area) > 0) || size.width === 0 || size.height === 0) return undefined;
  const [wide, high] = [size.width * AHEAD, size.height * AHEAD];
  const corners = [
    { x: -wide, y: -high },
    { x: size.width + wide, y: -high },
    { x: size.width + wide, y: size.height + high },
    { x: -wide, y: size.height + high },
  ].map((corner) => {
    const at = toSite(view, corner);
    const [x, y] = [at.x - c, at.y - f];
    return { x: (e * x - b * y) / area / layer.widthPixels, y: (a * y - d * x) / area / layer.heightPixels };
  });
  const [xs, ys] = [corners.map(({ x }) => x), corners.map(({ y }) => y)];
  const part = {
    left: Math.max(0, Math.min(...xs)),
    right: Math.min(1, Math.max(...xs)),
    top: Math.max(0, Math.min(...ys)),
    bottom: Math.min(1, Math.max(...ys)),
  };
  if (!(part.left < part.right && part.top < part.bottom)) return undefined;
  return { part, share: Math.sqrt(Math.abs(area)) * view.scale };
}
