import type { NamedEdit } from '@loopwright/document';
import { type HoleId, type Loop, numberHoles, type Routing } from '@loopwright/model';

/** Where in the round a new hole is to sit. */
export type PlaceChoice =
  | { readonly kind: 'next' }
  | { readonly kind: 'after'; readonly hole: HoleId }
  | { readonly kind: 'spare' };

export interface SeatForNew {
  readonly seat: Extract<NamedEdit, { readonly edit: 'draw hole' }>['seat'];
  /** What it will be numbered; a spare hole has none. */
  readonly number?: number;
  /** The hole that is played before it, whose green its tee should lie near. */
  readonly after?: HoleId;
}

/** A loop is a nine, until somebody made it longer: then it is a whole course. As courses are built. */
const isFull = ({ holes }: Loop): boolean => holes.length === 9 || holes.length >= 18;

/**
 * The seat a new hole takes: after the last hole of the first loop with room, in the order the first round plays them;
 * after the chosen hole; or beside the round, as it also does when every loop is full.
 *
 * @param drawn  the hole itself, where it is shown already: it does not sit after itself
 */
export function seatFor(routing: Routing, choice: PlaceChoice, drawn?: HoleId): SeatForNew {
  if (choice.kind === 'spare') return { seat: 'spare' };
  const loops = inOrderOfPlay(routing).map((loop) => ({ ...loop, holes: loop.holes.filter((id) => id !== drawn) }));
  const chosen = choice.kind === 'after' ? loops.find(({ holes }) => holes.includes(choice.hole)) : undefined;
  if (chosen && choice.kind === 'after') return seatAfter(loops, chosen, choice.hole);
  const open = loops.find((loop) => !isFull(loop));
  return open ? seatAfter(loops, open, open.holes.at(-1)) : { seat: 'spare' };
}

function inOrderOfPlay(routing: Routing): readonly Loop[] {
  const played = routing.rounds[0]?.loops ?? [];
  const place = (loop: Loop) => (played.includes(loop.id) ? played.indexOf(loop.id) : played.length);
  return [...routing.loops].sort((a, b) => place(a) - place(b));
}

function seatAfter(loops: readonly Loop[], loop: Loop, after: HoleId | undefined): SeatForNew {
  const before = loops.slice(0, loops.indexOf(loop)).flatMap(({ holes }) => holes);
  const within = after === undefined ? 0 : loop.holes.indexOf(after) + 1;
  const last = after ?? before.at(-1);
  return {
    seat: { loop: loop.id, after: after ?? 'first' },
    number: before.length + within + 1,
    ...(last === undefined ? {} : { after: last }),
  };
}

/** Between two holes that were picked out, where one follows the other on its loop; `undefined` for any others. */
export function placeBetween(routing: Routing, chosen: readonly HoleId[]): PlaceChoice | undefined {
  if (chosen.length !== 2) return undefined;
  for (const { holes } of routing.loops) {
    const first = holes.findIndex((hole, place) => chosen.includes(hole) && chosen.includes(holes[place + 1] ?? ''));
    const hole = holes[first];
    if (hole !== undefined) return { kind: 'after', hole };
  }
  return undefined;
}

/** The places a new hole can be given, in words. */
export function placeChoices(routing: Routing): readonly { readonly choice: PlaceChoice; readonly words: string }[] {
  const numbers = numberHoles(routing);
  const after = routing.loops
    .flatMap(({ holes }) => holes)
    .map((hole) => ({ choice: { kind: 'after', hole } as const, words: `after hole ${numbers.get(hole) ?? ''}` }));
  return [
    { choice: { kind: 'next' }, words: 'the next place' },
    ...after,
    { choice: { kind: 'spare' }, words: 'spare, out of the round' },
  ];
}
