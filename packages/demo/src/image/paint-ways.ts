import { FOOTPRINTS, LAID_FEATURES } from '../plan/laid-land.ts';
import type { Place } from '../plan/place.ts';
import { type Canvas, type Colour, dab, dot } from './canvas.ts';
import { emptyCover, fillOutline, pixelOf } from './cover.ts';
import { IMAGE_FRAME } from './image-frame.ts';

const VERGE: Colour = [196, 186, 156];
const ROAD: Colour = [224, 216, 202];
const TRACK: Colour = [232, 222, 196];
const ROOF: Colour = [186, 150, 130];
const ROOF_SHADOW: Colour = [140, 130, 112];

/** Old sandy tracks over the heath, there before any golf. */
const TRACKS: readonly (readonly Place[])[] = [
  [
    [606, 640],
    [540, 540],
    [400, 520],
    [270, 440],
    [160, 330],
    [60, 240],
  ],
  [
    [690, 690],
    [760, 540],
    [880, 440],
    [890, 250],
    [980, 60],
    [1040, -10],
  ],
  [
    [540, 540],
    [536, 380],
    [500, 210],
    [540, 20],
  ],
];

/** Tracks, path, road and drive, then the roofs. */
export function paintWays(canvas: Canvas): void {
  for (const track of TRACKS) stroke(canvas, track, 1.6, TRACK, 0.5);
  for (const { kind, line } of LAID_FEATURES) {
    if (!line) continue;
    if (kind === 'public path') stroke(canvas, line, 1.7, ROAD, 0.8);
    if (kind === 'course path') stroke(canvas, line, 3, ROAD, 0.8);
    if (kind !== 'public road') continue;
    stroke(canvas, line, 6, VERGE, 0.5);
    stroke(canvas, line, 4, ROAD, 0.9);
  }
  const houses = LAID_FEATURES.flatMap(({ kind, area }) => (kind === 'neighbour' && area ? [area] : []));
  for (const outline of [...FOOTPRINTS.slice(0, 2), ...houses]) roof(canvas, outline);
}

/** A line of soft dots, closer together than they are wide. */
function stroke(canvas: Canvas, line: readonly Place[], radius: number, colour: Colour, strength: number): void {
  let from = pixelOf(line[0] ?? [0, 0]);
  for (const place of line.slice(1)) {
    const to = pixelOf(place);
    const steps = Math.ceil(Math.sqrt((to[0] - from[0]) ** 2 + (to[1] - from[1]) ** 2) / radius);
    for (let i = 0; i < steps; i++) {
      const share = i / steps;
      dot(canvas, [from[0] + (to[0] - from[0]) * share, from[1] + (to[1] - from[1]) * share], radius, colour, strength);
    }
    from = to;
  }
}

function roof(canvas: Canvas, outline: readonly Place[]): void {
  const cover = emptyCover();
  fillOutline(cover, outline, 1);
  const { width } = IMAGE_FRAME;
  const eachPixel = (paint: (column: number, row: number) => void) => {
    for (let pixel = cover.indexOf(1); pixel >= 0; pixel = cover.indexOf(1, pixel + 1))
      paint(pixel % width, Math.floor(pixel / width));
  };
  eachPixel((column, row) => dab(canvas, column + 3, row + 4, ROOF_SHADOW, 0.4));
  eachPixel((column, row) => dab(canvas, column, row, ROOF, 1));
}
