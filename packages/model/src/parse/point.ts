import { pointToMillimetre } from '../millimetre.ts';
import type { Ring, SitePoint } from '../space.ts';
import { isFields, parseEach } from './fields.ts';
import { LIMITS } from './limits.ts';
import { parseNumber } from './number.ts';

/** A place on the site plane, to the millimetre: both coordinates finite and within 1,000 km of the origin. */
export function parsePoint(value: unknown): SitePoint | undefined {
  if (!isFields(value)) return undefined;
  const x = parseNumber(value.x, -LIMITS.coordinate, LIMITS.coordinate);
  const y = parseNumber(value.y, -LIMITS.coordinate, LIMITS.coordinate);
  return x === undefined || y === undefined ? undefined : pointToMillimetre({ x, y });
}

/** A list of places, at most `most`; undefined when any of them cannot be read. */
export function parsePoints(value: unknown, most: number = LIMITS.linePoints): readonly SitePoint[] | undefined {
  return parseEach(value, most, parsePoint);
}

/** A closed outline of 3 to 500 points. A repeat of the first point at the end is taken off, as are points in the same place. */
export function parseRing(value: unknown): Ring | undefined {
  const points = parsePoints(value, LIMITS.ringPoints + 1);
  if (points === undefined) return undefined;
  const ring = points.filter((point, index) => !isSame(point, points[index === 0 ? points.length - 1 : index - 1]));
  return ring.length >= 3 && ring.length <= LIMITS.ringPoints ? closedFromItsStart(ring, points[0]) : undefined;
}

/** Taking off repeats may have taken the first point off in favour of the last: they are the same place. */
function closedFromItsStart(ring: Ring, first: SitePoint | undefined): Ring {
  const last = ring.at(-1);
  return last !== undefined && isSame(last, first) ? [last, ...ring.slice(0, -1)] : ring;
}

function isSame(point: SitePoint, other: SitePoint | undefined): boolean {
  return other !== undefined && point.x === other.x && point.y === other.y;
}
