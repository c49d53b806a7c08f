import { type Canvas, type Colour, mixed } from './canvas.ts';
import { type Cover, distanceTo } from './cover.ts';
import { IMAGE_FRAME } from './image-frame.ts';
import { GROUND } from './land-cover.ts';
import { layered, type Noise } from './noise.ts';

const STRAW: Colour = [226, 214, 178];
const HEATHER: Colour = [201, 180, 170];
const GORSE: Colour = [197, 192, 146];
const SAND: Colour = [234, 222, 192];
const SHALLOW: Colour = [196, 212, 208];
const DEEP: Colour = [160, 188, 194];
const MUD: Colour = [205, 192, 164];
const MARSH: Colour = [204, 203, 166];
const SEDGE: Colour = [178, 194, 166];
const WOODLAND_FLOOR: Colour = [168, 174, 132];
const MOWN: Colour = [214, 214, 168];
const FIELDS: readonly Colour[] = [
  [222, 218, 186],
  [228, 216, 180],
  [212, 212, 176],
  [232, 222, 196],
];

/** Pixels over which water turns from shallow to deep. */
const SHOALING = 70;
/** Pixels of bare bank beside water. */
const BANK = 11;

/** Everything flat: heath, marsh, water, fields, mown ground, with the light from the north-west. */
export function paintGround(canvas: Canvas, cover: Cover, noise: Noise): void {
  const { width, height } = IMAGE_FRAME;
  const toWater = distanceTo(cover, GROUND.water);
  const toDry = distanceToDry(cover);
  for (let row = 0; row < height; row++) {
    for (let column = 0; column < width; column++) {
      const ragged = raggedIndex(noise, column, row);
      const here = cover[ragged] ?? GROUND.fields;
      const colour =
        here === GROUND.water
          ? mixed(SHALLOW, DEEP, (toDry[ragged] ?? 0) / SHOALING + 0.25 * noise(column / 60, row / 9))
          : mixed(MUD, groundColour(here, noise, column, row), (toWater[ragged] ?? 0) / BANK - 0.3);
      put(canvas, row * width + column, colour, lightAt(here, noise, column, row));
    }
  }
}

/** Edges wander by a few pixels, so that no outline looks ruled. */
function raggedIndex(noise: Noise, column: number, row: number): number {
  const { width, height } = IMAGE_FRAME;
  const x = Math.round(column + (noise(column / 14, row / 14) - 0.5) * 16);
  const y = Math.round(row + (noise(column / 14 + 90, row / 14 + 31) - 0.5) * 16);
  return Math.max(0, Math.min(height - 1, y)) * width + Math.max(0, Math.min(width - 1, x));
}

function groundColour(here: number, noise: Noise, column: number, row: number): Colour {
  if (here === GROUND.heath) return heathColour(noise, column, row);
  if (here === GROUND.saltmarsh) return mixed(MARSH, SAND, noise(column / 22, row / 8) * 1.6 - 0.5);
  if (here === GROUND.wetland) return mixed(SEDGE, SHALLOW, noise(column / 9, row / 5) * 2.4 - 1.2);
  if (here === GROUND.wood) return WOODLAND_FLOOR;
  if (here === GROUND.mown) return mixed(MOWN, STRAW, (column >> 4) % 2 === 0 ? 0.1 : 0.45);
  return fieldColour(noise, column, row);
}

function heathColour(noise: Noise, column: number, row: number): Colour {
  const heather = layered(noise, column / 70, row / 55) * 3.4 - 1.55;
  const gorse = layered(noise, column / 38 + 50, row / 38 + 9) * 5 - 3.1;
  const sand = layered(noise, column / 90 + 120, row / 60 + 77) * 6 - 4.1;
  return mixed(mixed(mixed(STRAW, HEATHER, heather), GORSE, gorse), SAND, sand);
}

/** Neighbouring farmland: large plots, ploughed one way. */
function fieldColour(noise: Noise, column: number, row: number): Colour {
  const plot = (Math.floor((column + row * 0.35) / 210) + 3 * Math.floor((row - column * 0.2) / 150)) & 3;
  const furrow = noise((column - row * 0.5) / 3, row / 80);
  return mixed(FIELDS[plot] ?? STRAW, STRAW, 0.2 + 0.4 * furrow);
}

/** Light and shade of gentle ground, with the grain of the paper. */
function lightAt(here: number, noise: Noise, column: number, row: number): number {
  const grain = (noise(column * 0.9, row * 0.9) - 0.5) * 7;
  if (here === GROUND.water) return grain * 0.4;
  const slope = layered(noise, column / 120, row / 120) - layered(noise, (column + 9) / 120, (row + 9) / 120);
  return grain + slope * 130;
}

function put(canvas: Canvas, pixel: number, colour: Colour, light: number): void {
  const start = pixel * 4;
  for (let channel = 0; channel < 3; channel++)
    canvas[start + channel] = Math.max(0, Math.min(255, (colour[channel] ?? 0) + light));
}

function distanceToDry(cover: Cover): Float32Array {
  return distanceTo(
    cover.map((here) => (here === GROUND.water ? 1 : 0)),
    0,
  );
}
