import { IMAGE_FRAME } from './image-frame.ts';

/** Red, green, blue, 0–255. */
export type Colour = readonly [number, number, number];

/** The picture while it is painted: four bytes a pixel, rows from the north. */
export type Canvas = Uint8Array;

export function emptyCanvas(): Canvas {
  return new Uint8Array(IMAGE_FRAME.width * IMAGE_FRAME.height * 4).fill(255);
}

/** A colour between two, 0 the first and 1 the second. */
export function mixed(a: Colour, b: Colour, share: number): Colour {
  const part = Math.max(0, Math.min(1, share));
  return [a[0] + (b[0] - a[0]) * part, a[1] + (b[1] - a[1]) * part, a[2] + (b[2] - a[2]) * part];
}

/** Lays a colour over what is there; `strength` 1 covers it. Outside the picture nothing happens. */
export function dab(canvas: Canvas, column: number, row: number, colour: Colour, strength: number): void {
  if (column < 0 || row < 0 || column >= IMAGE_FRAME.width || row >= IMAGE_FRAME.height) return;
  const start = (row * IMAGE_FRAME.width + column) * 4;
  for (let channel = 0; channel < 3; channel++) {
    const before = canvas[start + channel] ?? 0;
    canvas[start + channel] = before + ((colour[channel] ?? 0) - before) * strength;
  }
}

/** A soft-edged disc, `radius` in pixels. */
export function dot(
  canvas: Canvas,
  at: readonly [number, number],
  radius: number,
  colour: Colour,
  strength: number,
): void {
  const [x, y] = at;
  for (let row = Math.floor(y - radius); row <= y + radius; row++) {
    for (let column = Math.floor(x - radius); column <= x + radius; column++) {
      const inside = radius - Math.sqrt((column - x) ** 2 + (row - y) ** 2);
      if (inside > 0) dab(canvas, column, row, colour, strength * Math.min(1, inside));
    }
  }
}
