import type { NamedEdit } from '@loopwright/document';
import type { Hole, HoleId, PartId, Plan, Routing, SitePoint } from '@loopwright/model';

type Random = () => number;

/** One of a list by chance. */
export function pick<T>(list: readonly T[], random: Random): T | undefined {
  return list[Math.floor(random() * list.length)];
}

function somewhere(random: Random): SitePoint {
  return { x: Math.round(random() * 2_000_000) / 1000, y: Math.round(random() * 2_000_000) / 1000 };
}

function partsOf(hole: Hole): readonly PartId[] {
  return [
    'green',
    ...Object.keys(hole.tees).map((id): PartId => `tee:${id}`),
    ...hole.turnPoints.map(({ id }): PartId => `turn:${id}`),
  ];
}

function placeIn(routing: Routing, hole: HoleId, random: Random) {
  const loop = pick(routing.loops, random);
  if (!loop) return undefined;
  const after = pick(['first', ...loop.holes.filter((id) => id !== hole)], random) ?? 'first';
  return { loop: loop.id, after };
}

/** Something a person might do to this plan, by chance: mostly dragging and renumbering. */
export function randomEdit(plan: Plan, random: Random): NamedEdit | undefined {
  const routing = pick(plan.routings, random);
  const hole = routing && pick(routing.holes, random);
  if (!routing || !hole) return undefined;
  const of = { routing: routing.id, hole: hole.id };
  const chance = random();
  if (chance < 0.3)
    return { edit: 'move part', ...of, part: pick(partsOf(hole), random) ?? 'green', to: somewhere(random) };
  if (chance < 0.4) return { edit: 'move hole', ...of, by: { x: random() * 20 - 10, y: random() * 20 - 10 } };
  if (chance < 0.47) return { edit: 'reverse hole', ...of };
  if (chance < 0.54) return { edit: 'take out', ...of };
  const other = pick(routing.holes, random)?.id ?? hole.id;
  if (chance < 0.6) return { edit: 'swap places', ...of, with: other };
  if (chance < 0.85) {
    const place = placeIn(routing, hole.id, random);
    const edit = hole.seat.in === 'loop' ? 'move in the round' : 'bring back';
    return place && { edit, ...of, ...place };
  }
  return randomDecision(of, other, random);
}

function randomDecision(
  of: { readonly routing: string; readonly hole: string },
  other: string,
  random: Random,
): NamedEdit {
  const chance = random();
  if (chance < 0.2)
    return { edit: 'set par', ...of, sex: 'women', par: pick([3, 4, 5, 'by length'] as const, random) ?? 4 };
  if (chance < 0.4) return { edit: 'judge', ...of, verdict: 'weak', reason: `reason ${Math.floor(random() * 9)}` };
  if (chance < 0.5) return { edit: 'pin', ...of, part: 'green' };
  if (chance < 0.6) return { edit: 'unpin', ...of, part: 'green' };
  const relation = { kind: 'shares its green with', hole: other } as const;
  if (chance < 0.8) return { edit: random() < 0.6 ? 'relate' : 'unrelate', ...of, relation };
  return { edit: 'name hole', ...of, name: `Name ${Math.floor(random() * 9)}` };
}
