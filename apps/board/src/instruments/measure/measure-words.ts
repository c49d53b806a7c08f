import { bearingOf, distanceBetween, minus, polylineLength, ringArea } from '@loopwright/geometry';
import type { LengthUnit, SitePoint } from '@loopwright/model';
import { areaWords } from '../../reading/areas.ts';
import { bearingWords } from '../../reading/directions.ts';
import { lengthWords } from '../../reading/lengths.ts';
import { perimeterOf } from '../../reading/sketch-words.ts';

export type MeasureKind = 'measured line' | 'measured area';

/** What is read off at the pointer: this leg with its bearing, and what has been measured in all. */
export function measureWords(kind: MeasureKind, points: readonly SitePoint[], units: LengthUnit): readonly string[] {
  const [from, to] = [points.at(-2), points.at(-1)];
  if (!from || !to) return [];
  const leg = `${lengthWords(distanceBetween(from, to), units)}, bearing ${bearingWords(bearingOf(minus(to, from)))}`;
  if (kind === 'measured area' && points.length > 2) {
    const around = lengthWords(perimeterOf(points), units);
    return [leg, `${areaWords(Math.abs(ringArea(points)), units)}, ${around} around`];
  }
  return points.length > 2 ? [leg, `${lengthWords(polylineLength(points), units)} in all`] : [leg];
}
