import { type Analysis, walkBetweenLoops } from '@loopwright/analysis';
import { type HoleId, loopsOf, type Routing } from '@loopwright/model';

/**
 * The walk from each hole to the one played after it in the first round that plays both (m): from the green's edge to
 * the next tee. From loop to loop it is the straight way, past the base and not in at its door. Holes after which
 * nothing is played have none.
 */
export function walksToNext({ walks, holes }: Analysis, routing: Routing): ReadonlyMap<HoleId, number> {
  const byKey = new Map(walks.map((walk) => [walk.key, walk]));
  const toNext = new Map<HoleId, number>();
  const orders = [...routing.rounds.map((round) => loopsOf(routing, round)), ...routing.loops.map((loop) => [loop])];
  for (const loops of orders) {
    const order = loops.flatMap((loop) => loop.holes.map((hole) => ({ hole, loop: loop.id })));
    for (const [index, { hole, loop }] of order.entries()) {
      const [from, to] = [holes.get(hole), holes.get(order[index + 1]?.hole ?? '')];
      const walk = from && to && !toNext.has(hole) ? walkBetweenLoops(byKey, from, to, loop) : undefined;
      if (walk) toNext.set(hole, walk.distance);
    }
  }
  return toNext;
}
