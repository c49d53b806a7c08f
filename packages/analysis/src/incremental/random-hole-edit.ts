import type { Plan, SitePoint } from '@loopwright/model';
import { pointToMillimetre } from '@loopwright/model';
import { pick, type Random, shift, withHole } from './random-pick.ts';

/** For benches: the green of one hole somewhere near. */
export function moveGreen(plan: Plan, random: Random): Plan {
  return withHole(plan, random, (hole) =>
    hole.green ? { ...hole, green: { ...hole.green, centre: shift(hole.green.centre, random) } } : hole,
  );
}

function moveTee(plan: Plan, random: Random): Plan {
  return withHole(plan, random, (hole) => {
    const { back } = hole.tees;
    return back ? { ...hole, tees: { ...hole.tees, back: shift(back, random) } } : hole;
  });
}

function moveHole(plan: Plan, random: Random): Plan {
  const by = shift({ x: 0, y: 0 }, random);
  const moved = ({ x, y }: SitePoint) => pointToMillimetre({ x: x + by.x, y: y + by.y });
  return withHole(plan, random, (hole) => ({
    ...hole,
    tees: Object.fromEntries(Object.entries(hole.tees).map(([id, at]) => [id, moved(at)])),
    turnPoints: hole.turnPoints.map((turn) => ({ ...turn, at: moved(turn.at) })),
    ...(hole.green && { green: { ...hole.green, centre: moved(hole.green.centre) } }),
  }));
}

function setPar(plan: Plan, random: Random): Plan {
  const men = pick([3, 4, 5, 'by length'] as const, random) ?? 4;
  return withHole(plan, random, (hole) => ({ ...hole, par: { ...hole.par, men } }));
}

function widenCorridor(plan: Plan, random: Random): Plan {
  return withHole(plan, random, (hole) => ({ ...hole, corridor: { landing: Math.round(random() * 140) } }));
}

function addWaypoint(plan: Plan, random: Random): Plan {
  return withHole(plan, random, (hole) =>
    hole.green ? { ...hole, waypoints: [shift(hole.green.centre, random), ...hole.waypoints].slice(0, 3) } : hole,
  );
}

function relate(plan: Plan, random: Random): Plan {
  const kind = pick(['shares its green with', 'crosses on purpose', 'shares fairway with'] as const, random);
  const other = pick(plan.routings[0]?.holes ?? [], random);
  if (!kind || !other) return plan;
  return withHole(plan, random, (hole) => ({ ...hole, relations: [{ kind, hole: other.id }] }));
}

function takeGreen(plan: Plan, random: Random): Plan {
  return withHole(plan, random, ({ green: _, ...hole }) => hole);
}

function remove(plan: Plan, random: Random): Plan {
  return withHole(plan, random, (hole) => ({ ...hole, seat: { in: 'removed', key: hole.id } }));
}

function judge(plan: Plan, random: Random): Plan {
  const verdict = pick(['keeper', 'weak', 'sound'] as const, random) ?? 'weak';
  return withHole(plan, random, (hole) => ({ ...hole, verdict }));
}

/** For tests: changes to one hole. */
export const HOLE_EDITS: readonly ((plan: Plan, random: Random) => Plan)[] = [
  moveGreen,
  moveTee,
  moveHole,
  setPar,
  widenCorridor,
  addWaypoint,
  relate,
  takeGreen,
  remove,
  judge,
];
