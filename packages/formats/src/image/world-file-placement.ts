import { type ImageLayer, LIMITS, parsePlacement, type SurveyGrid } from '@loopwright/model';
import { type MapUnit, METRES_PER_MAP_UNIT } from '../survey/map-units.ts';
import type { WorldFile } from './world-file.ts';

/** What the six numbers count, and from where. */
export interface OnGrid {
  readonly unit: MapUnit;
  /** The survey grid of the board; without one the image brings it. */
  readonly grid?: SurveyGrid;
  /** Map distance ÷ ground distance, of a board that knows its projection; else 1. */
  readonly scaleFactor?: number;
}

export type PlacedByWorldFile =
  | {
      readonly kind: 'placed';
      readonly placement: ImageLayer['placement'];
      /** That of the board, or the one the image brings: to be set with it. */
      readonly grid: SurveyGrid;
    }
  /** One sentence. */
  | { readonly kind: 'too far'; readonly why: string };

/** A grid that an image brings has its origin on a whole hundred metres. */
const ROUND = 100;

/**
 * Where a world file puts an image on the site plane.
 *
 * The file speaks of pixel **centres** and counts the first as 0; a placement speaks of pixel **corners**, 0 at the
 * image's upper left corner. Half a pixel each way lies between: x = A·(column − ½) + B·(row − ½) + C.
 *
 * Without a survey grid the board gets one whose origin is the middle of the image, on a whole hundred metres, so that
 * the drawing stays near the plane's origin.
 *
 * @param size  of the image as its file stores it, before any turn its orientation asks for
 * @returns the placement (pixels to metres on the ground) and the grid it counts in; or `too far`, in one sentence, when it
 *   would lie beyond any site. Never throws
 *
 * Source: as `readWorldFile`.
 */
export function placementOf(
  { a, b, c, d, e, f }: WorldFile,
  size: { readonly widthPixels: number; readonly heightPixels: number },
  { unit, grid, scaleFactor = 1 }: OnGrid,
): PlacedByWorldFile {
  const metres = METRES_PER_MAP_UNIT[unit];
  const corner = { x: (c - (a + b) / 2) * metres, y: (f - (d + e) / 2) * metres };
  const { widthPixels, heightPixels } = size;
  const middle = {
    x: corner.x + ((a * widthPixels + b * heightPixels) / 2) * metres,
    y: corner.y + ((d * widthPixels + e * heightPixels) / 2) * metres,
  };
  const round = (value: number) => Math.round(value / ROUND) * ROUND + 0;
  const origin = grid ?? { easting: round(middle.x), northing: round(middle.y) };
  const ground = metres / scaleFactor;
  const placement = parsePlacement([
    a * ground,
    b * ground,
    (corner.x - origin.easting) / scaleFactor,
    d * ground,
    e * ground,
    (corner.y - origin.northing) / scaleFactor,
  ]);
  return placement ? { kind: 'placed', placement, grid: origin } : { kind: 'too far', why: tooFar(middle, origin) };
}

function tooFar(middle: { readonly x: number; readonly y: number }, origin: SurveyGrid): string {
  const [east, north] = [middle.x - origin.easting, middle.y - origin.northing];
  const kilometres = Math.round(Math.sqrt(east * east + north * north) / 1000);
  return `This world file puts the image ${kilometres} km from the site, and ${LIMITS.coordinate / 1000} km is as far as the drawing goes: check its unit and its survey grid.`;
}
