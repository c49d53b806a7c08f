import {
  bearingOf,
  crossingShares,
  dot,
  eachEdge,
  minus,
  plus,
  pointBetween,
  ringCentroid,
  scaled,
  turnedLeft,
  unitVector,
} from '@loopwright/geometry';
import { type GreenShape, LIMITS, pointToMillimetre, type Ring, type SitePoint, toMillimetre } from '@loopwright/model';

/**
 * A green nobody mapped: 28 m by 25 m, about 550 m².
 *
 * Source: mean of tour greens about 6,000 ft² (557 m²), GCSAA.
 */
export const ASSUMED_GREEN: GreenShape = { length: 28, width: 25, bearing: 0 };

/**
 * The size and lie of a mapped green: the sides of the smallest rectangle around it and the direction of its long side,
 * with the outline itself, relative to the centre the hole is measured to.
 *
 * Cost: O(n²) in the points of the outline, of which there are at most 500.
 */
export function greenShapeOf(outline: Ring, centre: SitePoint): GreenShape {
  const { along, length, width } = smallestRectangle(outline);
  const fit = (size: number) => toMillimetre(Math.min(LIMITS.greenSize, Math.max(1, size)));
  return {
    length: fit(length),
    width: fit(width),
    bearing: Math.round((bearingOf(along) % Math.PI) * 1e6) / 1e6,
    outline: outline.map((point) => pointToMillimetre(minus(point, centre))),
  };
}

/** It lies along one of the outline's edges: H. Freeman and R. Shapira, Communications of the ACM 18 (1975). */
function smallestRectangle(outline: Ring): { along: SitePoint; length: number; width: number } {
  let best = { along: { x: 0, y: 1 }, length: Number.POSITIVE_INFINITY, width: Number.POSITIVE_INFINITY };
  eachEdge(outline, (a, b) => {
    const along = unitVector(a, b);
    if (!along) return;
    const across = turnedLeft(along);
    const [length, width] = [extent(outline, along), extent(outline, across)];
    if (length * width >= best.length * best.width) return;
    best = length >= width ? { along, length, width } : { along: across, length: width, width: length };
  });
  return best;
}

function extent(outline: Ring, direction: SitePoint): number {
  let least = Number.POSITIVE_INFINITY;
  let most = Number.NEGATIVE_INFINITY;
  for (const point of outline) {
    const along = dot(point, direction);
    least = Math.min(least, along);
    most = Math.max(most, along);
  }
  return most - least;
}

/**
 * The centre of a green as a card measures it: the mean of the readings to its front and back edge on the line of play,
 * here the line from `from` through the middle of the green's area.
 *
 * Source: CONGU Unified Handicapping System, appendix A, golf course measurement.
 */
export function measuredCentre(outline: Ring, from: SitePoint): SitePoint {
  const middle = ringCentroid(outline);
  const towards = unitVector(from, middle);
  if (!towards) return middle;
  const reach = plus(middle, scaled(towards, 2 * LIMITS.greenSize));
  const readings: number[] = [];
  eachEdge(outline, (a, b) => {
    const shares = crossingShares(from, reach, a, b);
    if (shares && isWithin(shares.first) && isWithin(shares.second)) readings.push(shares.first);
  });
  if (readings.length < 2) return middle;
  return pointBetween(from, reach, (Math.min(...readings) + Math.max(...readings)) / 2);
}

const isWithin = (share: number) => share >= 0 && share <= 1;
