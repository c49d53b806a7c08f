import type { Analysis, WalkFigures } from '@loopwright/analysis';
import { type HoleId, loopsOf, type Routing, toMillimetre } from '@loopwright/model';

/**
 * The walk from each hole to the one played after it in the first round that plays both (m): straight on, or from the
 * last hole of a loop by way of its base where the next loop starts from there. Holes after which nothing is played have
 * none.
 */
export function walksToNext({ walks }: Analysis, routing: Routing): ReadonlyMap<HoleId, number> {
  const toNext = new Map<HoleId, number>();
  const orders = [...routing.rounds.map((round) => loopsOf(routing, round)), ...routing.loops.map((loop) => [loop])];
  for (const loops of orders) {
    const order = loops.flatMap(({ holes }) => holes);
    for (const [index, hole] of order.entries()) {
      const next = order[index + 1];
      const distance = next === undefined || toNext.has(hole) ? undefined : walkBetween(hole, next, walks);
      if (distance !== undefined) toNext.set(hole, distance);
    }
  }
  return toNext;
}

function walkBetween(from: HoleId, to: HoleId, walks: readonly WalkFigures[]): number | undefined {
  const first = walks.filter((walk) => 'hole' in walk.from && walk.from.hole === from);
  const direct = first.find((walk) => 'hole' in walk.to && walk.to.hole === to);
  if (direct) return direct.distance;
  const last = walks.find((walk) => 'base' in walk.from && 'hole' in walk.to && walk.to.hole === to);
  const home = first.find((walk) => 'base' in walk.to);
  if (!home || !last || !('base' in home.to) || !('base' in last.from)) return undefined;
  const [left, entered] = [home.to.base, last.from.base];
  if (left === entered) return toMillimetre(home.distance + last.distance);
  const between = walks.find(
    (walk) => 'base' in walk.from && 'base' in walk.to && walk.from.base === left && walk.to.base === entered,
  );
  return between && toMillimetre(home.distance + between.distance + last.distance);
}
