import type { NamedEdit } from '@loopwright/document';
import { distanceBetween } from '@loopwright/geometry';
import { type Hole, holeOf, type Routing } from '@loopwright/model';

/** Closer than this, in metres, a tee and its green are one place: nobody can play from one to the other. */
const NO_HOLE = 1;

const NO_LENGTH = 'A hole needs some length: its tee and its green cannot lie on each other. It was put back.';

/** Why a move is not made, in words for the person who made it; `undefined` when it can be. */
export function refusalOf(routing: Routing, edit: NamedEdit): string | undefined {
  if (edit.edit !== 'move part') return undefined;
  const hole = holeOf(routing, edit.hole);
  if (!hole) return undefined;
  const { part, to } = edit;
  if (part === 'green') return Object.values(hole.tees).some((tee) => lies(tee, to)) ? NO_LENGTH : undefined;
  return part.startsWith('tee:') && hole.green && lies(hole.green.centre, to) ? NO_LENGTH : undefined;
}

const lies = (one: NonNullable<Hole['green']>['centre'], other: typeof one) => distanceBetween(one, other) < NO_HOLE;
