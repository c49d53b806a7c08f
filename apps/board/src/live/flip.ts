import type { Plan, RoutingId } from '@loopwright/model';

/**
 * The routing to flip to from the one shown: the one shown before it, else the next on the board.
 *
 * @param before  what was shown before, if anything; it may be gone meanwhile
 * @returns `undefined` where there is no other
 */
export function flipTo(plan: Plan, shown: RoutingId, before: RoutingId | undefined): RoutingId | undefined {
  const others = plan.routings.filter(({ id }) => id !== shown);
  const next = plan.routings[plan.routings.findIndex(({ id }) => id === shown) + 1];
  return (others.find(({ id }) => id === before) ?? next ?? others[0])?.id;
}
