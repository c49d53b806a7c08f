import { bearingOf, distanceBetween, minus, polylineLength, ringArea, ringIsSimple } from '@loopwright/geometry';
import { type LengthUnit, LIMITS, type SitePoint } from '@loopwright/model';
import { areaWords } from '../../reading/areas.ts';
import { bearingWords } from '../../reading/directions.ts';
import { lengthWords } from '../../reading/lengths.ts';

/** A closed outline or an open line. */
export type OutlineShape = 'area' | 'line';

/** Points it takes to be one. */
export const FEWEST: Readonly<Record<OutlineShape, number>> = { area: 3, line: 2 };
const MOST: Readonly<Record<OutlineShape, number>> = { area: LIMITS.ringPoints, line: LIMITS.linePoints };

/** Said instead of writing an outline that crosses itself: nobody could say what lies inside it. */
export const CROSSES_ITSELF =
  'This outline crosses or touches itself, so it was not written: take corners back, or go on around.';

/** Why these points cannot be written yet, in words; `undefined` when they can. */
export function notYet(shape: OutlineShape, points: readonly SitePoint[]): string | undefined {
  if (points.length < FEWEST[shape]) {
    return shape === 'area' ? 'An outline needs three corners.' : 'A line needs two points.';
  }
  return shape === 'area' && !ringIsSimple(points) ? CROSSES_ITSELF : undefined;
}

/** Why no further point is taken; `undefined` while there is room. */
export function noMore(shape: OutlineShape, points: readonly SitePoint[]): string | undefined {
  return points.length < MOST[shape]
    ? undefined
    : `${MOST[shape]} points are the most one outline takes: close it here. Larger drawings go under the plan as a picture.`;
}

/** What is read off at the pointer: this side with its bearing, then the area or the length so far. */
export function outlineWords(shape: OutlineShape, points: readonly SitePoint[], units: LengthUnit): readonly string[] {
  const [from, to] = [points.at(-2), points.at(-1)];
  if (!from || !to) return [];
  const side = `${lengthWords(distanceBetween(from, to), units)}, bearing ${bearingWords(bearingOf(minus(to, from)))}`;
  if (points.length < 3) return [side];
  if (shape === 'line') return [side, `${lengthWords(polylineLength(points), units)} in all`];
  const area = ringIsSimple(points) ? areaWords(Math.abs(ringArea(points)), units) : 'crosses itself';
  return [side, area];
}
