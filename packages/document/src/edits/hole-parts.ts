import { type HoleId, parsePoint, parsePoints, type RoutingId, type SitePoint } from '@loopwright/model';
import { type Parts, partsOf } from '../cells.ts';
import { parsePlacedTurn } from '../reading/read-hole.ts';
import type { Reading } from '../reading/reading.ts';

/** The parts of a hole as they stand in the document. Only for copying and exchanging; what they mean is read elsewhere. */
export function cellsOfHole(reading: Reading, routing: RoutingId, hole: HoleId): Parts {
  return partsOf(reading.cells, 'holes', `${routing}/${hole}`);
}

/** What stands at a part, to be written elsewhere; `null` for nothing, and for what is not plain JSON. */
export function plainAt(parts: Parts, part: string): unknown {
  const value = parts.get(part) ?? null;
  return typeof value === 'function' ? null : value;
}

/** Whether an id was never used among its like, or everything about it was taken back. */
export function isUnused(parts: Parts): boolean {
  return [...parts.values()].every((value) => value === null);
}

/**
 * What stands at a part, `by` beside it. Parts that lie nowhere stay as they are.
 *
 * @returns `undefined` when it would leave the site plane
 */
export function shiftedPart(parts: Parts, part: string, by: SitePoint): unknown {
  const value = plainAt(parts, part);
  if (value === null) return null;
  const shifted = (at: SitePoint) => parsePoint({ x: at.x + by.x, y: at.y + by.y });
  if (part.startsWith('turn:')) {
    const turn = parsePlacedTurn(part.slice(5), value);
    const at = turn && shifted(turn.at);
    return turn ? at && { ...at, order: turn.order } : null;
  }
  if (part === 'waypoints') {
    const points = parsePoints(value) ?? [];
    const moved = points.flatMap((at) => shifted(at) ?? []);
    return moved.length === points.length ? moved : undefined;
  }
  if (part !== 'green' && !part.startsWith('tee:')) return value;
  const at = parsePoint(value);
  return at ? shifted(at) : null;
}
