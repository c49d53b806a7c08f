import type { Place } from '../plan/place.ts';
import { IMAGE_FRAME } from './image-frame.ts';

/** What lies on each pixel of the picture: one small number each, rows from the north. */
export type Cover = Uint8Array;

/** A place of the site as (column, row), not rounded. */
export function pixelOf([x, y]: Place): Place {
  return [(x - IMAGE_FRAME.left) / IMAGE_FRAME.metresPerPixel, (IMAGE_FRAME.top - y) / IMAGE_FRAME.metresPerPixel];
}

export function emptyCover(): Cover {
  return new Uint8Array(IMAGE_FRAME.width * IMAGE_FRAME.height);
}

/** Fills an outline with `value`, row by row between the crossings of its edges. */
export function fillOutline(cover: Cover, outline: readonly Place[], value: number): void {
  const corners = outline.map(pixelOf);
  for (let row = 0; row < IMAGE_FRAME.height; row++) {
    const crossings = crossingsOf(corners, row + 0.5);
    for (let i = 0; i + 1 < crossings.length; i += 2) {
      const first = Math.max(0, Math.ceil((crossings[i] ?? 0) - 0.5));
      const last = Math.min(IMAGE_FRAME.width, Math.ceil((crossings[i + 1] ?? 0) - 0.5));
      if (last > first) cover.fill(value, row * IMAGE_FRAME.width + first, row * IMAGE_FRAME.width + last);
    }
  }
}

function crossingsOf(corners: readonly Place[], level: number): readonly number[] {
  const crossings: number[] = [];
  let from = corners.at(-1) ?? [0, 0];
  for (const to of corners) {
    if (from[1] > level !== to[1] > level)
      crossings.push(from[0] + ((level - from[1]) / (to[1] - from[1])) * (to[0] - from[0]));
    from = to;
  }
  return crossings.sort((a, b) => a - b);
}

/**
 * Pixels to the nearest one of `value`, by two sweeps; close enough for shading a bank.
 *
 * Source: the 3-4 chamfer distance, G. Borgefors 1986.
 */
export function distanceTo(cover: Cover, value: number): Float32Array {
  const { width, height } = IMAGE_FRAME;
  const away = Float32Array.from(cover, (here) => (here === value ? 0 : 1e6));
  const sweep = (from: number, step: number) => {
    const reach = [-step, -step * width, -step * (width + 1), -step * (width - 1)];
    const cost = [1, 1, 4 / 3, 4 / 3];
    for (let i = from; i >= 0 && i < width * height; i += step) {
      let nearest = away[i] ?? 0;
      for (let k = 0; k < 4; k++) nearest = Math.min(nearest, (away[i + (reach[k] ?? 0)] ?? 1e6) + (cost[k] ?? 0));
      away[i] = nearest;
    }
  };
  sweep(0, 1);
  sweep(width * height - 1, -1);
  return away;
}
