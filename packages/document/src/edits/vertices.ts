import { parsePoint, type SitePoint } from '@loopwright/model';
import type { Reading } from '../reading/reading.ts';
import type { EditNamed, EditWrites } from './edit-named.ts';
import { type Outline, outlineOf } from './outline.ts';

/**
 * A corner of an outline or a bend of a line put elsewhere. It is known by where it lay, to the millimetre: whoever
 * moved it first wins, and the other's edit is `gone` rather than moving a neighbour.
 *
 * Put on the corner beside it the two become one; `nothing` when too few would be left.
 */
export function moveVertex(edit: EditNamed<'move vertex'>, reading: Reading): EditWrites {
  const outline = outlineOf(edit.outline, reading);
  const to = parsePoint(edit.to);
  if (outline === 'gone') return 'gone';
  const index = indexOf(outline, edit.from);
  if (index < 0) return 'gone';
  if (to === undefined || isSamePlace(outline.points[index], to)) return 'nothing';
  return written(outline, joined(outline, index, to));
}

/** The points with one of them elsewhere, without the neighbours it then lies on. */
function joined({ points, isClosed }: Outline, index: number, to: SitePoint): readonly SitePoint[] {
  const around = (place: number) => points[isClosed ? (place + points.length) % points.length : place];
  const left = isSamePlace(around(index - 1), to) ? around(index - 1) : undefined;
  const right = isSamePlace(around(index + 1), to) ? around(index + 1) : undefined;
  return points.flatMap((point, place) => {
    if (place === index) return [to];
    return point === left || point === right ? [] : [point];
  });
}

/**
 * A new corner between the one that lies at `after` and the next; behind the last bend of a line it makes the line
 * longer. `nothing` when it would lie on a corner beside it, or when the outline has as many points as it can have.
 */
export function addVertex(edit: EditNamed<'add vertex'>, reading: Reading): EditWrites {
  const outline = outlineOf(edit.outline, reading);
  const at = parsePoint(edit.at);
  if (outline === 'gone') return 'gone';
  const { points, isClosed } = outline;
  const index = indexOf(outline, edit.after);
  if (index < 0) return 'gone';
  const next = points[isClosed ? (index + 1) % points.length : index + 1];
  if (at === undefined || points.length === 1) return 'nothing';
  if (isSamePlace(points[index], at) || isSamePlace(next, at)) return 'nothing';
  return written(outline, [...points.slice(0, index + 1), at, ...points.slice(index + 1)]);
}

/** A corner taken out; `nothing` when too few would be left to be an outline or a line. */
export function removeVertex(edit: EditNamed<'remove vertex'>, reading: Reading): EditWrites {
  const outline = outlineOf(edit.outline, reading);
  if (outline === 'gone') return 'gone';
  const index = indexOf(outline, edit.at);
  if (index < 0) return 'gone';
  return written(
    outline,
    outline.points.filter((_, place) => place !== index),
  );
}

/**
 * A whole outline or line, `by` beside itself; an area takes what is cut out of it along. `nothing` when a point of it
 * would leave the site plane.
 */
export function moveOutline(edit: EditNamed<'move outline'>, reading: Reading): EditWrites {
  const outline = outlineOf(edit.outline, reading);
  if (outline === 'gone') return 'gone';
  return outline.writeEach(({ x, y }) => ({ x: x + edit.by.x, y: y + edit.by.y }));
}

function written(outline: Outline, points: readonly SitePoint[]): EditWrites {
  return points.length < outline.least ? 'nothing' : outline.write(points);
}

function indexOf({ points }: Outline, at: SitePoint): number {
  const place = parsePoint(at);
  return place ? points.findIndex((point) => isSamePlace(point, place)) : -1;
}

function isSamePlace(point: SitePoint | undefined, other: SitePoint): boolean {
  return point !== undefined && point.x === other.x && point.y === other.y;
}
