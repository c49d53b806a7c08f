import type { HoleId, Routing } from '@loopwright/model';
import type { Names } from '../reading/names.ts';
import type { BeadPlace } from './bead-moves.ts';

/** A place as it is announced: 'after hole 4 on the Front nine'. */
export function placeWords(place: BeadPlace, names: Names): string {
  if (place.in === 'tray') return 'the spare tray, out of the round';
  const loop = names.loop(place.loop);
  return place.after === 'first' ? `first on ${loop}` : `after hole ${names.number(place.after)} on ${loop}`;
}

export const GRABBED_HINT = 'Arrow up and down move it, Enter puts it down, Escape leaves it where it was.';

export function grabbedWords(number: string): string {
  return `Hole ${number} picked up. ${GRABBED_HINT}`;
}

interface HeldBead {
  readonly hole: HoleId;
  readonly place: BeadPlace;
}

/** Numbers change with the move: all are said as they were at picking up. */
export function movedWords({ hole, place }: HeldBead, names: Names): string {
  return `Hole ${names.number(hole)}: ${placeWords(place, names)}.`;
}

export function droppedWords({ hole, place }: HeldBead, names: Names): string {
  return `Hole ${names.number(hole)} put down: ${placeWords(place, names)}.`;
}

export function leftWords(number: string): string {
  return `Hole ${number} left where it was.`;
}

export interface HoleChoice {
  readonly hole: HoleId;
  readonly words: string;
}

/** Other holes one can swap with, in playing order. */
export function swapChoices(routing: Routing, names: Names, hole: HoleId): readonly HoleChoice[] {
  return routing.loops
    .flatMap((loop) => loop.holes)
    .filter((other) => other !== hole)
    .map((other) => ({ hole: other, words: `Hole ${names.number(other)}` }));
}
