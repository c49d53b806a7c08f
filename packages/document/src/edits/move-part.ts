import { type Hole, type PartId, parsePoint, type SitePoint } from '@loopwright/model';
import { partsOf } from '../cells.ts';
import { parsePlacedTurn } from '../reading/read-hole.ts';
import type { Reading } from '../reading/reading.ts';
import type { EditNamed, EditWrites } from './edit-named.ts';
import { openHole } from './open-hole.ts';

/**
 * Puts a tee, turn point or green somewhere else. A tee that was only proposed, or a green that was missing, is placed
 * by it.
 *
 * A point is one value: with x and y apart, two people dragging it could make a third place.
 *
 * @throws RangeError if the place is not finite or beyond the plane: the caller's bug
 */
export function movePart(edit: EditNamed<'move part'>, reading: Reading): EditWrites {
  const to = parsePoint(edit.to);
  if (to === undefined) throw new RangeError('move part: the place must be finite and on the site plane');
  const open = openHole(reading, edit);
  if (typeof open === 'string') return open;
  if (!canBePlaced(reading, open.hole, edit.part)) return 'gone';
  return [open.write(edit.part, valueOfPart(reading, open.routing.id, open.hole.id, edit.part, to))];
}

function canBePlaced(reading: Reading, hole: Hole, part: PartId): boolean {
  if (part === 'green') return true;
  const id = part.slice(part.indexOf(':') + 1);
  return part.startsWith('tee:')
    ? reading.plan.teeSets.some((teeSet) => teeSet.id === id)
    : hole.turnPoints.some((turn) => turn.id === id);
}

/** What stands at a part's key when it lies at a place: a turn point also keeps its order in play. */
export function valueOfPart(reading: Reading, routing: string, hole: string, part: PartId, to: SitePoint): unknown {
  if (!part.startsWith('turn:')) return { x: to.x, y: to.y };
  const turn = parsePlacedTurn(part.slice(5), partsOf(reading.cells, 'holes', `${routing}/${hole}`).get(part));
  return { x: to.x, y: to.y, order: turn?.order ?? 'a0' };
}
