import type { NamedEdit } from '@loopwright/document';
import { type Hole, type HoleId, makeId, type PartId, type Routing } from '@loopwright/model';
import { pick, type Random, somewhere } from './random-pick.ts';

interface OfHole {
  readonly routing: string;
  readonly hole: HoleId;
}

const step = (random: Random) => ({ x: Math.round(random() * 20) - 10, y: Math.round(random() * 20) - 10 });

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

/** Something a person might do to a hole, by chance: mostly dragging and renumbering. */
export function randomHoleEdit(routing: Routing, hole: Hole, random: Random): NamedEdit | undefined {
  const of = { routing: routing.id, hole: hole.id };
  const other = pick(routing.holes, random)?.id ?? hole.id;
  const chance = random();
  if (chance < 0.26)
    return { edit: 'move part', ...of, part: pick(partsOf(hole), random) ?? 'green', to: somewhere(random) };
  if (chance < 0.32) return { edit: 'move hole', ...of, by: step(random) };
  if (chance < 0.36) return { edit: 'move holes', routing: routing.id, holes: [hole.id, other], by: step(random) };
  if (chance < 0.41) return { edit: 'reverse hole', ...of };
  if (chance < 0.46) return { edit: 'take out', ...of };
  if (chance < 0.5) return { edit: 'swap places', ...of, with: other };
  if (chance < 0.54) return { edit: 'exchange corridors', ...of, with: other };
  if (chance < 0.68) {
    const place = placeIn(routing, hole.id, random);
    return place && { edit: hole.seat.in === 'loop' ? 'move in the round' : 'bring back', ...of, ...place };
  }
  if (chance < 0.75) return randomNewHole(routing, of, random);
  return chance < 0.88 ? randomShape(hole, of, random) : randomDecision(hole, of, other, random);
}

function randomNewHole(routing: Routing, of: OfHole, random: Random): NamedEdit {
  const chance = random();
  if (chance < 0.25) return { edit: 'remove hole', ...of };
  // A board is drawn on by several: it stays small enough to collide often.
  const standing = routing.holes.filter(({ seat }) => seat.in !== 'removed').length;
  if (standing > 14) return { edit: 'take out', ...of };
  if (chance < 0.5) return { edit: 'copy hole', ...of, as: makeId('h', random), by: step(random) };
  return randomDrawing(routing, random() < 0.2 ? of.hole : makeId('h', random), random);
}

/** A hole drawn into a routing, or half of one. */
export function randomDrawing(routing: Routing, hole: HoleId, random: Random): NamedEdit {
  return {
    edit: 'draw hole',
    routing: routing.id,
    hole,
    seat: placeIn(routing, hole, random) ?? 'spare',
    tees: random() < 0.9 ? { back: somewhere(random) } : {},
    turnPoints: random() < 0.5 ? [{ id: 't1', at: somewhere(random) }] : [],
    ...(random() < 0.7 && { green: { centre: somewhere(random), length: 30, width: 22, bearing: 0.5 } }),
  };
}

function randomShape(hole: Hole, of: OfHole, random: Random): NamedEdit {
  const chance = random();
  if (chance < 0.25)
    return {
      edit: 'add turn point',
      ...of,
      turn: makeId('t', random),
      at: somewhere(random),
      place: Math.floor(random() * 4),
    };
  if (chance < 0.4) return { edit: 'remove turn point', ...of, turn: pick(hole.turnPoints, random)?.id ?? 'none' };
  if (chance < 0.6)
    return { edit: 'lengthen', ...of, end: random() < 0.5 ? 'green' : 'tee:back', by: Math.round(random() * 60) - 30 };
  if (chance < 0.7)
    return { edit: 'shape green', ...of, shape: { length: 20 + Math.round(random() * 20), width: 20, bearing: 1 } };
  if (chance < 0.8) return { edit: 'propose tee', ...of, teeSet: pick(Object.keys(hole.tees), random) ?? 'back' };
  if (chance < 0.9) return { edit: 'set waypoints', ...of, waypoints: random() < 0.3 ? [] : [somewhere(random)] };
  return { edit: 'set corridor', ...of, corridor: random() < 0.3 ? null : { landing: 30 + Math.round(random() * 9) } };
}

function randomDecision(hole: Hole, of: OfHole, other: HoleId, random: Random): NamedEdit {
  const chance = random();
  if (chance < 0.2)
    return { edit: 'set par', ...of, sex: 'women', par: pick([3, 4, 5, 'by length'] as const, random) ?? 4 };
  if (chance < 0.4) return { edit: 'judge', ...of, verdict: 'weak', reason: `reason ${Math.floor(random() * 9)}` };
  if (chance < 0.5) return { edit: 'pin', ...of, part: 'green' };
  if (chance < 0.6) return { edit: 'unpin', ...of, part: 'green' };
  const relation = { kind: 'shares its green with', hole: other } as const;
  if (chance < 0.72) return { edit: 'relate', ...of, relation };
  if (chance < 0.8) return { edit: 'unrelate', ...of, relation: hole.relations[0] ?? relation };
  if (chance < 0.9) return { edit: 'note hole', ...of, note: `Note ${Math.floor(random() * 9)}` };
  return { edit: 'name hole', ...of, name: `Name ${Math.floor(random() * 9)}` };
}
