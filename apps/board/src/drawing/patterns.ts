import type { FeatureManner } from './feature-view.ts';
import { INKS } from './inks.ts';

/** A hatch that tells a kind of ground apart without its colour; a small tile, drawn sharp at two pixels a pixel. */
type Hatch = (pen: CanvasRenderingContext2D) => void;

const TILE = 24;
/** Tiles hold this many of their own pixels for one on the drawing. */
export const TILE_SHARPNESS = 2;

const stroke = (
  pen: CanvasRenderingContext2D,
  colour: string,
  width: number,
  lines: readonly (readonly number[])[],
) => {
  pen.strokeStyle = colour;
  pen.lineWidth = width;
  pen.lineCap = 'round';
  pen.beginPath();
  for (const [x1 = 0, y1 = 0, x2 = 0, y2 = 0] of lines) {
    pen.moveTo(x1, y1);
    pen.lineTo(x2, y2);
  }
  pen.stroke();
};

const ground = (pen: CanvasRenderingContext2D, colour: string) => {
  pen.fillStyle = colour;
  pen.fillRect(0, 0, TILE, TILE);
};

const HATCHES: Readonly<Partial<Record<FeatureManner, Hatch>>> = {
  water: (pen) => {
    ground(pen, INKS.water);
    stroke(pen, 'rgba(127, 163, 176, 0.55)', 1, [
      [2, 7, 11, 7],
      [14, 19, 22, 19],
    ]);
  },
  wetland: (pen) => {
    ground(pen, 'rgba(201, 216, 216, 0.45)');
    stroke(pen, INKS.waterLine, 1, [
      [3, 9, 11, 9],
      [5, 9, 4, 5],
      [7, 9, 7, 4],
      [9, 9, 10, 5],
      [14, 21, 22, 21],
      [16, 21, 15, 17],
      [18, 21, 18, 16],
      [20, 21, 21, 17],
    ]);
  },
  trees: (pen) => {
    ground(pen, INKS.trees);
    pen.strokeStyle = 'rgba(108, 127, 78, 0.45)';
    pen.lineWidth = 1;
    for (const [x, y, r] of [
      [7, 7, 3.5],
      [18, 17, 3],
      [17, 5, 2],
    ] as const) {
      pen.beginPath();
      pen.arc(x, y, r, 0, 2 * Math.PI);
      pen.stroke();
    }
  },
  'kept out': (pen) => {
    stroke(pen, 'rgba(90, 102, 112, 0.45)', 1, [
      [-2, 14, 14, -2],
      [-2, 26, 26, -2],
      [10, 26, 26, 10],
    ]);
  },
  sand: (pen) => {
    ground(pen, INKS.sand);
    pen.fillStyle = 'rgba(169, 143, 76, 0.6)';
    for (const [x, y] of [
      [4, 5],
      [13, 9],
      [8, 17],
      [20, 20],
    ] as const) {
      pen.fillRect(x, y, 1, 1);
    }
  },
  mown: (pen) => {
    ground(pen, 'rgba(47, 107, 79, 0.07)');
    stroke(pen, 'rgba(47, 107, 79, 0.10)', 1, [[12, 0, 12, 24]]);
  },
};

/** The tile of each manner that has a hatch. Made once per page, by the view that draws. */
export function makePatterns(document: Document): ReadonlyMap<FeatureManner, HTMLCanvasElement> {
  const tiles = new Map<FeatureManner, HTMLCanvasElement>();
  for (const [manner, hatch] of Object.entries(HATCHES)) {
    const tile = document.createElement('canvas');
    tile.width = TILE * TILE_SHARPNESS;
    tile.height = TILE * TILE_SHARPNESS;
    const pen = tile.getContext('2d');
    if (!pen) continue;
    pen.scale(TILE_SHARPNESS, TILE_SHARPNESS);
    hatch(pen);
    tiles.set(manner as FeatureManner, tile);
  }
  return tiles;
}
