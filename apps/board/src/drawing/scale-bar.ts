import { type LengthUnit, metresFromYards } from '@loopwright/model';

/** A bar of a round length, not longer than the room for it. */
export interface ScaleBarView {
  readonly pixels: number;
  readonly label: string;
}

/** Lengths a scale bar may have, in its unit. */
const ROUND_LENGTHS = [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000, 2000, 5000, 10_000, 20_000, 50_000];

/**
 * @param scale  pixels per metre
 * @param most  room for the bar, in pixels
 */
export function toScaleBar(scale: number, unit: LengthUnit, most: number): ScaleBarView {
  const unitPixels = scale * (unit === 'yards' ? metresFromYards(1) : 1);
  const length = ROUND_LENGTHS.findLast((round) => round * unitPixels <= most) ?? 1;
  return { pixels: length * unitPixels, label: `${length.toLocaleString('en')} ${unit === 'yards' ? 'yd' : 'm'}` };
}
