import type { NamedEdit } from '@loopwright/document';
import { type Loop, makeId, type Plan, type Routing } from '@loopwright/model';
import { pick, type Random } from './random-pick.ts';

/** Routings beside the first that people leave standing: a simulated board stays small. */
const MOST_ROUTINGS = 3;

/** Something a person might do to a routing, its loops or its rounds, by chance. */
export function randomRoutingEdit(plan: Plan, routing: Routing, random: Random): NamedEdit {
  const of = { routing: routing.id };
  const chance = random();
  const loop = pick(routing.loops, random);
  if (chance < 0.08) return { edit: routing.locked ? 'unlock routing' : 'lock routing', ...of };
  if (routing.locked) return { edit: 'unlock routing', ...of };
  if (chance < 0.16) return randomCopy(plan, routing, random);
  if (chance < 0.2) return { edit: 'name routing', ...of, name: `Routing ${Math.floor(random() * 9)}` };
  if (!loop || chance < 0.28) {
    const made = { id: makeId('l', random), name: 'Loop', base: 'house' };
    return { edit: 'add loop', ...of, loop: made, after: loop?.id ?? 'first' };
  }
  return chance < 0.75 ? randomLoopEdit(routing, loop, random) : randomRoundEdit(routing, loop, random);
}

function randomCopy(plan: Plan, { id }: Routing, random: Random): NamedEdit {
  if (plan.routings.length > MOST_ROUTINGS) return { edit: 'remove routing', routing: plan.routings[1]?.id ?? id };
  if (random() < 0.8) return { edit: 'copy routing', routing: id, as: makeId('r', random), name: 'Copy' };
  return {
    edit: 'start routing',
    routing: makeId('r', random),
    name: 'Fresh',
    loops: [{ id: 'out', name: 'Out' }],
    rounds: [{ id: 'main', name: 'Main', loops: ['out'] }],
  };
}

function randomLoopEdit(routing: Routing, loop: Loop, random: Random): NamedEdit {
  const of = { routing: routing.id, loop: loop.id };
  const chance = random();
  const as = { id: makeId('l', random), name: 'New' };
  if (chance < 0.3) return { edit: 'split loop', ...of, after: pick(loop.holes, random) ?? 'h1', as };
  if (chance < 0.55) return { edit: 'join loops', ...of, with: pick(routing.loops, random)?.id ?? loop.id };
  if (chance < 0.75) return { edit: 'reverse loop', ...of };
  if (chance < 0.85)
    return { edit: 'change loop', ...of, to: { name: `Loop ${Math.floor(random() * 9)}`, base: null } };
  if (chance < 0.93 || routing.holes.length > 40) return { edit: 'remove loop', ...of };
  const holes = loop.holes.map((hole) => ({ hole, as: makeId('h', random) }));
  return { edit: 'copy loop', ...of, as, holes, by: { x: 300, y: 0 } };
}

function randomRoundEdit(routing: Routing, loop: Loop, random: Random): NamedEdit {
  const of = { routing: routing.id };
  const loops = [loop.id, pick(routing.loops, random)?.id ?? loop.id];
  const round = pick(routing.rounds, random);
  const chance = random();
  if (!round || chance < 0.4) {
    return { edit: 'add round', ...of, round: { id: makeId('r', random), name: 'Round', loops }, after: 'first' };
  }
  return chance < 0.75
    ? { edit: 'change round', ...of, round: round.id, to: { loops } }
    : { edit: 'remove round', ...of, round: round.id };
}
