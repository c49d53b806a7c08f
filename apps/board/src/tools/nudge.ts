import type { NamedEdit } from '@loopwright/document';
import { type Hole, holeOf, type PartId, type Routing, type SitePoint } from '@loopwright/model';
import type { Selection } from '../board/parts.ts';

/** The edit that moves what is picked out by so much; `undefined` when nothing that can move is picked out. */
export function nudgeEdit(routing: Routing, selection: Selection, by: SitePoint): NamedEdit | undefined {
  const hole = selection.hole === undefined ? undefined : holeOf(routing, selection.hole);
  if (!hole) return undefined;
  const { part } = selection;
  if (part === undefined) return { edit: 'move hole', routing: routing.id, hole: hole.id, by };
  const at = placeOfPart(hole, part);
  if (!at) return undefined;
  return { edit: 'move part', routing: routing.id, hole: hole.id, part, to: { x: at.x + by.x, y: at.y + by.y } };
}

/** Where a part lies; `undefined` for one that the hole does not have, or that nobody has placed. */
export function placeOfPart(hole: Hole, part: PartId): SitePoint | undefined {
  if (part === 'green') return hole.green?.centre;
  if (part.startsWith('tee:')) return hole.tees[part.slice('tee:'.length)];
  return hole.turnPoints.find(({ id }) => `turn:${id}` === part)?.at;
}

/** The parts of a hole in order of play. */
export function partsInPlay(hole: Hole): readonly PartId[] {
  const tees = Object.keys(hole.tees).map((teeSet): PartId => `tee:${teeSet}`);
  const turns = hole.turnPoints.map(({ id }): PartId => `turn:${id}`);
  return hole.green ? [...tees, ...turns, 'green'] : [...tees, ...turns];
}

/** The next part to be picked out; after the last, the whole hole. */
export function nextPart(hole: Hole, part: PartId | undefined): PartId | undefined {
  const parts = partsInPlay(hole);
  return part === undefined ? parts[0] : parts[parts.indexOf(part) + 1];
}

/** The hole to be picked out before or after this one: the round first, then the spare holes, and around again. */
export function neighbourInRound(routing: Routing, current: Selection['hole'], step: 1 | -1): Selection['hole'] {
  const order = [...routing.loops.flatMap(({ holes }) => holes), ...routing.spare];
  if (order.length === 0) return undefined;
  const place = current === undefined ? -1 : order.indexOf(current);
  if (place < 0) return step === 1 ? order[0] : order.at(-1);
  return order[(place + step + order.length) % order.length];
}
