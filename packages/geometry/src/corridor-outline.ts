import type { SitePoint } from '@loopwright/model';
import { distanceBetween } from './point.ts';

/** Points of the half circle behind the end, from side to side: every 22.5°, from exact roots, not from sines. */
const ROOT = Math.sqrt(2) / 2;
const SIXTEENTH = Math.sqrt(2 - Math.sqrt(2)) / 2;
const REST = Math.sqrt(2 + Math.sqrt(2)) / 2;
const END_ROUND: readonly (readonly [ahead: number, across: number])[] = [
  [SIXTEENTH, REST],
  [ROOT, ROOT],
  [REST, SIXTEENTH],
  [1, 0],
  [REST, -SIXTEENTH],
  [ROOT, -ROOT],
  [SIXTEENTH, -REST],
];

/** A bend is cut to a bevel where its mitre would be longer than this many half-widths. */
const LONGEST_MITRE = 2;

/**
 * The outline of a strip whose half-width changes evenly from point to point of a line:
 * square at its start, mitred at its bends, rounded past its end by `behind` (else by the last half-width).
 *
 * Counter-clockwise. For the drawing: a very sharp bend may fold on its inner side, so fill by the non-zero rule.
 * Points that coincide with the one before are passed over. Fewer than two distinct points: an empty outline.
 *
 * @param halfWidths  one for each point, metres
 * Cost: a few operations per point; cheap enough for every frame.
 * @throws RangeError when there is not one half-width for each point
 */
export function corridorOutline(
  points: readonly SitePoint[],
  halfWidths: readonly number[],
  behind?: number,
): readonly SitePoint[] {
  if (points.length !== halfWidths.length) throw new RangeError('corridorOutline: one half-width for each point');
  const stations = distinctStations(points, halfWidths);
  const left: SitePoint[] = [];
  const right: SitePoint[] = [];
  for (const [i, station] of stations.entries()) {
    addSides(left, right, stations[i - 1], station, stations[i + 1]);
  }
  const last = stations[stations.length - 1];
  const before = stations[stations.length - 2];
  if (!last || !before) return [];
  return [...right, ...roundEnd(before, last, behind ?? last.halfWidth), ...left.reverse()];
}

interface Station extends SitePoint {
  readonly halfWidth: number;
}

function distinctStations(points: readonly SitePoint[], halfWidths: readonly number[]): readonly Station[] {
  const stations: Station[] = [];
  points.forEach(({ x, y }, i) => {
    const before = stations[stations.length - 1];
    if (before && before.x === x && before.y === y) return;
    stations.push({ x, y, halfWidth: halfWidths[i] ?? 0 });
  });
  return stations;
}

/** Direction of a leg, as cosine and sine. */
function direction(from: SitePoint, to: SitePoint): { readonly x: number; readonly y: number } {
  const length = distanceBetween(from, to);
  return { x: (to.x - from.x) / length, y: (to.y - from.y) / length };
}

function addSides(
  left: SitePoint[],
  right: SitePoint[],
  before: Station | undefined,
  at: Station,
  after: Station | undefined,
): void {
  const into = before && direction(before, at);
  const out = after && direction(at, after);
  const first = into ?? out;
  const second = out ?? into;
  if (!first || !second) return;
  // The sum of the two left normals points along the mitre; its length says how sharp the bend is.
  const sumX = -first.y - second.y;
  const sumY = first.x + second.x;
  const squared = sumX * sumX + sumY * sumY;
  if (squared * LONGEST_MITRE * LONGEST_MITRE >= 4) {
    const mitre = (2 * at.halfWidth) / squared;
    left.push({ x: at.x + sumX * mitre, y: at.y + sumY * mitre });
    right.push({ x: at.x - sumX * mitre, y: at.y - sumY * mitre });
    return;
  }
  for (const leg of [first, second]) {
    left.push({ x: at.x - leg.y * at.halfWidth, y: at.y + leg.x * at.halfWidth });
    right.push({ x: at.x + leg.y * at.halfWidth, y: at.y - leg.x * at.halfWidth });
  }
}

function roundEnd(before: Station, last: Station, behind: number): readonly SitePoint[] {
  const ahead = direction(before, last);
  return END_ROUND.map(([along, across]) => ({
    // From the right side round to the left: `across` counts to the right of play.
    x: last.x + ahead.x * along * behind + ahead.y * across * last.halfWidth,
    y: last.y + ahead.y * along * behind - ahead.x * across * last.halfWidth,
  }));
}
