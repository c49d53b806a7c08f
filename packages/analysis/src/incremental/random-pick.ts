import type { Hole, Plan, Routing, SitePoint } from '@loopwright/model';
import { pointToMillimetre } from '@loopwright/model';

/** For tests: numbers in [0, 1). */
export type Random = () => number;

export function pick<Item>(items: readonly Item[], random: Random): Item | undefined {
  return items[Math.floor(random() * items.length)];
}

export function shift(at: SitePoint, random: Random): SitePoint {
  return pointToMillimetre({ x: at.x + (random() - 0.5) * 120, y: at.y + (random() - 0.5) * 120 });
}

export function withRouting(plan: Plan, change: (routing: Routing) => Routing): Plan {
  return { ...plan, routings: plan.routings.map(change) };
}

export function withHole(plan: Plan, random: Random, change: (hole: Hole) => Hole): Plan {
  return withRouting(plan, (routing) => {
    const chosen = pick(routing.holes, random);
    return { ...routing, holes: routing.holes.map((hole) => (hole === chosen ? change(hole) : hole)) };
  });
}
