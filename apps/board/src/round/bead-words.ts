import type { HoleId } from '@loopwright/model';
import type { Names } from '../reading/names.ts';
import type { BeadPlace } from './bead-moves.ts';

/** A place as it is announced: 'after hole 4 on the Front nine'. */
export function placeWords(place: BeadPlace, names: Names): string {
  if (place.in === 'tray') return 'the spare tray, out of the round';
  const loop = names.loop(place.loop);
  return place.after === 'first' ? `first on ${loop}` : `after hole ${names.number(place.after)} on ${loop}`;
}

export const GRABBED_HINT = 'Arrow up and down move it, Enter puts it down, Escape leaves it where it was.';

/** What is in the hand, as it was numbered at picking up: 'Hole 6', '3 holes'. */
export function heldWords(holes: readonly HoleId[], names: Names): string {
  const [only] = holes;
  return only !== undefined && holes.length === 1 ? `Hole ${names.number(only)}` : `${holes.length} holes`;
}

export function grabbedWords(holes: readonly HoleId[], names: Names): string {
  return `${heldWords(holes, names)} picked up. ${GRABBED_HINT}`;
}

interface HeldBeads {
  readonly holes: readonly HoleId[];
  readonly place: BeadPlace;
}

/** Numbers change with the move: all are said as they were at picking up. */
export function movedWords({ holes, place }: HeldBeads, names: Names): string {
  return `${heldWords(holes, names)}: ${placeWords(place, names)}.`;
}

export function droppedWords({ holes, place }: HeldBeads, names: Names): string {
  return `${heldWords(holes, names)} put down: ${placeWords(place, names)}.`;
}

export function leftWords(holes: readonly HoleId[], names: Names): string {
  return `${heldWords(holes, names)} left where ${holes.length === 1 ? 'it was' : 'they were'}.`;
}

export interface HoleChoice {
  readonly hole: HoleId;
  readonly words: string;
}

/** Holes a loop can be split after: all but its last. */
export function splitChoices(holes: readonly HoleId[], names: Names): readonly HoleChoice[] {
  return holes.slice(0, -1).map((hole) => ({ hole, words: `Hole ${names.number(hole)}` }));
}
