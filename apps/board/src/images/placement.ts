import { type Box, bearingOf, boundsOf, carried, type Similarity } from '@loopwright/geometry';
import type { ImageLayer, SitePoint } from '@loopwright/model';
import { cornersOf } from '../drawing/images/corners.ts';

export type Placement = ImageLayer['placement'];

/** Pixels of an image, as it is shown. */
export interface Pixels {
  readonly widthPixels: number;
  readonly heightPixels: number;
}

/** Metres a first image is taken to be wide until somebody knows: an eighteen-hole site is about that. Common practice, no source. */
export const GUESSED_WIDTH = 1200;

/** Upright, with its middle at a point and so many metres wide. */
export function laidAbout({ widthPixels, heightPixels }: Pixels, middle: SitePoint, width: number): Placement {
  const metres = width / widthPixels;
  return [metres, 0, middle.x - width / 2, 0, -metres, middle.y + (metres * heightPixels) / 2];
}

/** How much of what is in view a further image takes at first. */
const SHARE_OF_VIEW = 0.7;

/** Upright in the middle of what is in view. */
export function laidInView(pixels: Pixels, view: Box): Placement {
  const [width, height] = [view.maxX - view.minX, view.maxY - view.minY];
  const metres = Math.min(width / pixels.widthPixels, height / pixels.heightPixels) * SHARE_OF_VIEW;
  const middle = { x: (view.minX + view.maxX) / 2, y: (view.minY + view.maxY) / 2 };
  return laidAbout(pixels, middle, metres * pixels.widthPixels);
}

/** The same image after all of it was turned, scaled and shifted on the ground. */
export function placedAfter(placement: Placement, move: Similarity): Placement {
  const [a, b, c, d, e, f] = placement;
  const { p, q } = move;
  const corner = carried(move, { x: c, y: f });
  return [p * a - q * d, p * b - q * e, corner.x, q * a + p * d, q * b + p * e, corner.y];
}

/** A change of size about a point that stays where it lies. */
export function sizedAbout(at: SitePoint, factor: number): Similarity {
  return { p: factor, q: 0, e: at.x * (1 - factor), n: at.y * (1 - factor) };
}

/** A turn about a point that stays, in degrees clockwise. */
export function turnedAbout(at: SitePoint, degrees: number): Similarity {
  const angle = (-degrees * Math.PI) / 180;
  const [p, q] = [Math.cos(angle), Math.sin(angle)];
  return { p, q, e: at.x - (p * at.x - q * at.y), n: at.y - (q * at.x + p * at.y) };
}

/** The middle of an image on the ground. */
export function middleOf(layer: ImageLayer): SitePoint {
  const box = boundsOf(cornersOf(layer));
  return { x: (box.minX + box.maxX) / 2, y: (box.minY + box.maxY) / 2 };
}

export interface OnTheGround {
  /** Metres along the upper and the left side. */
  readonly width: number;
  readonly height: number;
  /** Degrees its upper side is turned clockwise, 0 to 360, to a tenth. */
  readonly turnedDegrees: number;
}

/** How large an image lies on the ground, and how it is turned. */
export function onTheGround(layer: ImageLayer): OnTheGround {
  const [a, b, , d, e] = layer.placement;
  const bearingDegrees = (bearingOf({ x: a, y: d }) * 180) / Math.PI;
  const tenths = Math.round((bearingDegrees - 90) * 10);
  return {
    width: Math.sqrt(a * a + d * d) * layer.widthPixels,
    height: Math.sqrt(b * b + e * e) * layer.heightPixels,
    turnedDegrees: ((tenths + 3600) % 3600) / 10,
  };
}
