import { type ImageLayer, seededRandom } from '@loopwright/model';
import { emptyCanvas } from './canvas.ts';
import { IMAGE_FRAME, PLACEMENT } from './image-frame.ts';
import { landCover } from './land-cover.ts';
import { noiseFrom } from './noise.ts';
import { paintGround } from './paint-ground.ts';
import { paintTrees } from './paint-trees.ts';
import { paintWays } from './paint-ways.ts';

/** A picture of the invented site, as it would be seen from the air. */
export interface DemoImage {
  readonly width: number;
  readonly height: number;
  /** Four bytes a pixel, rows from the north; opaque. */
  readonly rgba: Uint8Array;
  readonly metresPerPixel: number;
  /** Site point of pixel (column, row), as an image layer keeps it. */
  readonly placement: ImageLayer['placement'];
}

/** The picture follows from this number and the laid land, and from nothing else. */
const IMAGE_SEED = 90210;

/**
 * The demo's site image, painted afresh: heath, creek, woods, tracks, in tones light enough for ink lines to read on.
 *
 * Cost: about two million pixels, some half a second; the same bytes on every run of one engine.
 */
export function demoImage(): DemoImage {
  const random = seededRandom(IMAGE_SEED);
  const noise = noiseFrom(random);
  const cover = landCover();
  const canvas = emptyCanvas();
  paintGround(canvas, cover, noise);
  paintWays(canvas);
  paintTrees(canvas, cover, noise, random);
  return {
    width: IMAGE_FRAME.width,
    height: IMAGE_FRAME.height,
    rgba: canvas,
    metresPerPixel: IMAGE_FRAME.metresPerPixel,
    placement: PLACEMENT,
  };
}
