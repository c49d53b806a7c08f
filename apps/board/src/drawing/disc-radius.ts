/** Pixels: a number's disc where one looks near enough, and where eighteen of them would hide the holes. */
const NEAR = 11.5;
const FAR = 8.5;

/** The radius of a hole number's disc in pixels, at so many pixels per metre: full size from 0.6, least from 0.3. */
export function discRadius(scale: number): number {
  return Math.min(NEAR, Math.max(FAR, FAR + (scale - 0.3) * 10));
}
