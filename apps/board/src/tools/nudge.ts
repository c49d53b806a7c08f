import type { NamedEdit } from '@loopwright/document';
import {
  type Hole,
  type HoleId,
  holeOf,
  type PartId,
  pointToMillimetre,
  type Routing,
  type SitePoint,
} from '@loopwright/model';
import type { Consequences, Selection } from '../board/parts.ts';
import { chosenHoles, holesInOrder } from './chosen-holes.ts';
import type { HeldParts } from './tool.ts';

/** Something that the arrow keys move. */
export interface Nudging {
  /** Parts that must not be pinned, by hole. */
  readonly holds: readonly HeldParts[];
  /** Whether a locked routing keeps it where it is: what is on the site moves all the same. */
  readonly of: 'routing' | 'site';
  /** The edit that moves it so far from where it is written to lie. */
  editFor(by: SitePoint): NamedEdit | undefined;
}

/**
 * What the arrow keys move: the part picked out, else every hole picked out; `undefined` when nothing that can move is.
 * A tee that is only proposed is placed by being moved.
 *
 * @param shown  as it lies when the first key goes down
 */
export function nudgeOf({ routing, analysis }: Consequences, selection: Selection): Nudging | undefined {
  const chosen = chosenHoles(routing, selection);
  const [only] = chosen;
  if (only === undefined) return undefined;
  const hole = holeOf(routing, only);
  if (chosen.length === 1 && hole && selection.part !== undefined) {
    const { part } = selection;
    const at =
      placeOfPart(hole, part) ?? analysis.holes.get(hole.id)?.tees.find((tee) => part === `tee:${tee.teeSet}`)?.at;
    return at && nudgePart(routing, hole, part, at);
  }
  const holds = chosen.map((id) => ({ hole: id, parts: partsOfHole(routing, id) }));
  return {
    holds,
    of: 'routing',
    editFor: (by) =>
      chosen.length === 1
        ? { edit: 'move hole', routing: routing.id, hole: only, by: pointToMillimetre(by) }
        : { edit: 'move holes', routing: routing.id, holes: chosen, by: pointToMillimetre(by) },
  };
}

function nudgePart(routing: Routing, hole: Hole, part: PartId, at: SitePoint): Nudging {
  return {
    holds: [{ hole: hole.id, parts: [part] }],
    of: 'routing',
    editFor: (by) => {
      const to = pointToMillimetre({ x: at.x + by.x, y: at.y + by.y });
      return { edit: 'move part', routing: routing.id, hole: hole.id, part, to };
    },
  };
}

function partsOfHole(routing: Routing, id: HoleId): readonly PartId[] {
  const hole = holeOf(routing, id);
  return hole ? partsInPlay(hole) : [];
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
  const order = holesInOrder(routing);
  if (order.length === 0) return undefined;
  const place = current === undefined ? -1 : order.indexOf(current);
  if (place < 0) return step === 1 ? order[0] : order.at(-1);
  return order[(place + step + order.length) % order.length];
}
