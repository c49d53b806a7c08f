import type { NamedEdit } from '@loopwright/document';
import { makeId, type Plan } from '@loopwright/model';
import { randomDrawing, randomHoleEdit } from './random-hole-edit.ts';
import { pick, type Random } from './random-pick.ts';
import { randomRoutingEdit } from './random-routing-edit.ts';
import { randomSiteEdit } from './random-site-edit.ts';

/** Something a person might do to this plan, by chance: mostly to holes, now and then to loops, routings and the land. */
export function randomEdit(plan: Plan, random: Random): NamedEdit | undefined {
  const chance = random();
  if (chance < 0.04) return randomSeveral(plan, random);
  return randomSingle(plan, random);
}

function randomSingle(plan: Plan, random: Random): NamedEdit | undefined {
  const chance = random();
  // The first routing most often: that is where people meet.
  const routing = random() < 0.6 ? plan.routings[0] : pick(plan.routings, random);
  if (!routing || chance < 0.1) return randomSiteEdit(plan, random);
  const standing = routing.holes.filter(({ seat }) => seat.in !== 'removed');
  const hole = pick(standing.length > 0 && random() < 0.95 ? standing : routing.holes, random);
  if (!hole && chance < 0.8) return randomDrawing(routing, makeId('h', random), random);
  return !hole || chance < 0.22 ? randomRoutingEdit(plan, routing, random) : randomHoleEdit(routing, hole, random);
}

function randomSeveral(plan: Plan, random: Random): NamedEdit {
  const edits = [1, 2, 3].flatMap(() => randomSingle(plan, random) ?? []);
  return { edit: 'several', does: 'do three things', edits };
}
