import type { NamedEdit } from '@loopwright/document';
import { carried, distancesLeft, fitSimilarity } from '@loopwright/geometry';
import type { ImageLayer, SitePoint } from '@loopwright/model';
import { sitePointOf } from '../../drawing/images/corners.ts';
import { type Placement, placedAfter } from '../../images/placement.ts';
import type { PixelPoint } from './image-under.ts';

/** A point of an image, and where on the site it belongs. */
export interface Match {
  readonly pixel: PixelPoint;
  readonly to: SitePoint;
}

export interface Laid {
  readonly placement: Placement;
  /** Where each matched pixel lies now. */
  readonly at: readonly SitePoint[];
  /** Metres each is left from where it belongs. */
  readonly left: readonly number[];
}

/**
 * An image laid over what is there by matched points: one shifts it, two turn and scale it, of more the fit is best.
 *
 * @returns `undefined` without a match, or when the points are all in one place
 */
export function laidOver(image: ImageLayer, matches: readonly Match[]): Laid | undefined {
  const pairs = matches.map(({ pixel, to }) => ({ from: sitePointOf(image, pixel.column, pixel.row), to }));
  const move = fitSimilarity(pairs);
  return (
    move && {
      placement: placedAfter(image.placement, move),
      at: pairs.map(({ from }) => carried(move, from)),
      left: distancesLeft(move, pairs),
    }
  );
}

/** The edit; a picture laid over others that lie by a guess lies by a guess itself. */
export function layOverEdit(image: ImageLayer, laid: Laid, others: readonly ImageLayer[]): NamedEdit {
  const isKnown = laid.at.length > 1 && others.some(({ id, scaledBy }) => id !== image.id && scaledBy !== 'guess');
  const to = { placement: laid.placement, ...(isKnown ? { scaledBy: 'two points' as const } : {}) };
  return { edit: 'change image', image: image.id, to };
}
