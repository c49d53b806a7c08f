import { type HoleId, holeOf, type LoopId, type Routing } from '@loopwright/model';
import type { Write } from '../cells.ts';
import type { EditWrites } from './edit-named.ts';
import type { OpenHole } from './open-hole.ts';
import { writeOfHole } from './open-hole.ts';
import { type Placed, placeAfter } from './order.ts';

/** Where a hole may sit in play or beside it. */
type Row = { readonly in: 'loop'; readonly loop: LoopId } | { readonly in: 'spare' };

function placedIn(routing: Routing, holes: readonly HoleId[]): readonly Placed[] {
  return holes.map((id) => ({ id, key: holeOf(routing, id)?.seat.key ?? 'a0' }));
}

/**
 * Seats a hole in a row, after the one at `index`. A seat is one value: however many people move a hole at once, it
 * sits in one place.
 */
function seatAfter(open: OpenHole, row: Row, others: readonly HoleId[], index: number): readonly Write[] {
  const { key, rekeyed } = placeAfter(placedIn(open.routing, others), index);
  return [
    open.write('seat', { ...row, key }),
    ...rekeyed.map((other) => writeOfHole(open.routing.id, other.id, 'seat', { ...row, key: other.key })),
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
  const others = loop.holes.filter((id) => id !== hole.id);
  const index = after === 'first' ? -1 : others.indexOf(after);
  if (after !== 'first' && index < 0) return 'gone';
  return seatAfter(open, { in: 'loop', loop: loopId }, others, index);
}

/** Seats a hole last in the spare tray. */
export function seatInTray(open: OpenHole): EditWrites {
  const { routing, hole } = open;
  if (hole.seat.in === 'spare') return 'nothing';
  return seatAfter(open, { in: 'spare' }, routing.spare, routing.spare.length - 1);
}
