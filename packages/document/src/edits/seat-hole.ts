import { type HoleId, holeOf, type Loop, type LoopId, type Routing } from '@loopwright/model';
import type { Write } from '../cells.ts';
import type { EditWrites } from './edit-named.ts';
import type { OpenHole } from './open-hole.ts';
import { writeOfHole } from './open-hole.ts';
import { type Placed, placeAfter } from './order.ts';

/** Where a hole may sit in play or beside it. */
type Row = { readonly in: 'loop'; readonly loop: LoopId } | { readonly in: 'spare' };

/** Holes of a row with the keys of their seats. */
export function placedIn(routing: Routing, holes: readonly HoleId[]): readonly Placed[] {
  return holes.map((id) => ({ id, key: holeOf(routing, id)?.seat.key ?? 'a0' }));
}

/**
 * Seats a hole in a row, after the one at `index`. A seat is one value: however many people move a hole at once, it
 * sits in one place.
 */
function seatAfter(
  routing: Routing,
  hole: HoleId,
  row: Row,
  { others, index }: { readonly others: readonly HoleId[]; readonly index: number },
): readonly Write[] {
  const { key, rekeyed } = placeAfter(placedIn(routing, others), index);
  return [
    writeOfHole(routing.id, hole, 'seat', { ...row, key }),
    ...rekeyed.map((other) => writeOfHole(routing.id, other.id, 'seat', { ...row, key: other.key })),
  ];
}

/**
 * Seats a hole in a loop, after a hole that sits there, or first.
 *
 * @returns `gone` when the loop, or the hole to sit after, is not there any more; `nothing` when it sits there already
 */
export function seatInLoop(open: OpenHole, loopId: LoopId, after: HoleId | 'first'): EditWrites {
  const { routing, hole } = open;
  const loop = routing.loops.find(({ id }) => id === loopId);
  if (!loop) return 'gone';
  if (after === hole.id) return 'nothing';
  const now = loop.holes.indexOf(hole.id);
  if (now >= 0 && (loop.holes[now - 1] ?? 'first') === after) return 'nothing';
  if (after !== 'first' && !loop.holes.includes(after)) return 'gone';
  return seatNewInLoop(routing, hole.id, loop, after);
}

/** Seats a hole in a loop, after a hole that sits there, or first. */
export function seatNewInLoop(
  routing: Routing,
  hole: HoleId,
  loop: Pick<Loop, 'id' | 'holes'>,
  after: HoleId | 'first',
): readonly Write[] {
  const others = loop.holes.filter((id) => id !== hole);
  const index = after === 'first' ? -1 : others.indexOf(after);
  return seatAfter(routing, hole, { in: 'loop', loop: loop.id }, { others, index });
}

/** Seats a hole last in the spare tray. */
export function seatInTray({ routing, hole }: OpenHole): EditWrites {
  return hole.seat.in === 'spare' ? 'nothing' : seatNewInTray(routing, hole.id);
}

/** Seats a hole that has no seat yet, or one elsewhere, last in the spare tray. */
export function seatNewInTray(routing: Routing, hole: HoleId): readonly Write[] {
  return seatAfter(routing, hole, { in: 'spare' }, { others: routing.spare, index: routing.spare.length - 1 });
}
