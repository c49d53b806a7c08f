import { type Canvas, type Colour, dot } from './canvas.ts';
import type { Cover } from './cover.ts';
import { IMAGE_FRAME } from './image-frame.ts';
import { GROUND } from './land-cover.ts';
import type { Noise } from './noise.ts';

const SHADE: Colour = [128, 132, 104];
const LEAF: Colour = [156, 168, 122];
const LIT: Colour = [182, 190, 146];
const SHRUB: Colour = [170, 168, 120];

/** Pixels between the places where a crown may stand in a wood, and a shrub on the heath. */
const WOOD_STEP = 6;
const HEATH_STEP = 15;

/** Crowns of the woods and shrubs of the heath, each with a shadow away from the light. */
export function paintTrees(canvas: Canvas, cover: Cover, noise: Noise, random: () => number): void {
  scatter(HEATH_STEP, random, (column, row) => {
    if (groundAt(cover, column, row) !== GROUND.heath) return;
    if (noise(column / 45 + 7, row / 45 + 3) < 0.68) return;
    crown(canvas, column, row, 1.4 + random() * 1.8, SHRUB);
  });
  scatter(WOOD_STEP, random, (column, row) => {
    if (groundAt(cover, column, row) !== GROUND.wood) return;
    crown(canvas, column, row, 3.2 + random() * 2.6, LEAF);
  });
}

/** Offers places over the whole picture, one to each square of `step` pixels, shaken out of the grid. */
function scatter(step: number, random: () => number, offer: (column: number, row: number) => void): void {
  for (let row = 0; row < IMAGE_FRAME.height; row += step) {
    for (let column = 0; column < IMAGE_FRAME.width; column += step)
      offer(Math.floor(column + random() * step), Math.floor(row + random() * step));
  }
}

function groundAt(cover: Cover, column: number, row: number): number {
  return cover[row * IMAGE_FRAME.width + column] ?? GROUND.fields;
}

function crown(canvas: Canvas, column: number, row: number, radius: number, leaf: Colour): void {
  dot(canvas, [column + radius * 0.35, row + radius * 0.4], radius, SHADE, 0.5);
  dot(canvas, [column, row], radius * 0.95, leaf, 0.75);
  dot(canvas, [column - radius * 0.3, row - radius * 0.35], radius * 0.5, LIT, 0.6);
}
