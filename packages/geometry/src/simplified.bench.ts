// A hand's line thinned to half a metre: ours beside turf's `simplify`, told to leave out its rough first pass, which would
// be another method. Both are Douglas–Peucker; turf also copies the line into GeoJSON and back.
import { type SitePoint, seededRandom } from '@loopwright/model';
import { lineString, simplify } from '@turf/turf';
import { bench, describe } from 'vitest';
import { simplified } from './simplified.ts';

const POINTS = 5000;
const TOLERANCE = 0.5;
const random = seededRandom(5);
const LINE: readonly SitePoint[] = Array.from({ length: POINTS }, (_, step) => ({
  x: step * 0.4 + random() * 0.3,
  y: 60 * Math.sin(step / 300) + 15 * Math.sin(step / 40) + random() * 0.3,
}));
const DRAWN = lineString(LINE.map(({ x, y }) => [x, y]));

describe(`a line of ${POINTS} points thinned to ${TOLERANCE} m`, () => {
  bench('ours', () => {
    if (simplified(LINE, TOLERANCE).length < 2) throw new Error('nothing left');
  });
  bench('turf simplify, highQuality', () => {
    const left = simplify(DRAWN, { tolerance: TOLERANCE, highQuality: true }).geometry.coordinates;
    if (left.length < 2) throw new Error('nothing left');
  });
});
