import type { Hole } from './hole.ts';
import type { HoleId } from './ids.ts';
import type { Loop, Round, Routing } from './plan.ts';

/** The loops of a round, in order; loops that are gone are left out. */
export function loopsOf(routing: Routing, round: Round): readonly Loop[] {
  const byId = new Map(routing.loops.map((loop) => [loop.id, loop]));
  return round.loops.flatMap((id) => byId.get(id) ?? []);
}

/** The holes of a round in playing order. */
export function playingOrder(routing: Routing, round: Round): readonly HoleId[] {
  return loopsOf(routing, round).flatMap((loop) => loop.holes);
}

/**
 * The number of every hole in play: its place in the first round that plays it, else in its own loop.
 *
 * Numbers follow from order; nobody types them. Spare and removed holes have none.
 */
export function numberHoles(routing: Routing): ReadonlyMap<HoleId, number> {
  const numbers = new Map<HoleId, number>();
  const count = (holes: readonly HoleId[]) => {
    holes.forEach((hole, index) => {
      if (!numbers.has(hole)) numbers.set(hole, index + 1);
    });
  };
  for (const round of routing.rounds) count(playingOrder(routing, round));
  for (const loop of routing.loops) count(loop.holes);
  return numbers;
}

/** A hole of a routing by its id. O(log n): holes are kept by id order. */
export function holeOf(routing: Routing, id: HoleId): Hole | undefined {
  let low = 0;
  let high = routing.holes.length - 1;
  while (low <= high) {
    const middle = (low + high) >> 1;
    const hole = routing.holes[middle];
    if (!hole) return undefined;
    if (hole.id === id) return hole;
    if (hole.id < id) low = middle + 1;
    else high = middle - 1;
  }
  return undefined;
}
