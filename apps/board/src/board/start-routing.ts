import type { NamedEdit } from '@loopwright/document';
import { makeId, newPlan, type Plan } from '@loopwright/model';
import { chance } from '../instruments/chance.ts';

const freshId = (letter: string) => makeId(letter, chance);

/** The edit that gives a board without a routing one of two nines; a board without anything gets its tee sets too. */
export function startRoutingEdit(plan: Plan): NamedEdit {
  const fresh = newPlan({ name: plan.site.name, units: plan.site.units ?? 'yards', holes: 18, freshId });
  const [routing] = fresh.routings;
  if (plan.teeSets.length === 0 || !routing) return { edit: 'lay out plan', plan: { ...fresh, site: plan.site } };
  const { name, loops, rounds } = routing;
  return {
    edit: 'start routing',
    routing: freshId('r'),
    name,
    loops: loops.map(({ id, name: title }) => ({ id, name: title })),
    rounds,
  };
}
