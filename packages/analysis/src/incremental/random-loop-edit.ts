import type { Hole, Plan, Routing } from '@loopwright/model';
import { pick, type Random, withRouting } from './random-pick.ts';

/** The holes of one loop follow those of another; rounds lose the second. */
function joinLoops(plan: Plan, random: Random): Plan {
  return withRouting(plan, (routing) => {
    const first = pick(routing.loops, random);
    const second = pick(routing.loops, random);
    if (!first || !second || first === second) return routing;
    const joined = { ...first, holes: [...first.holes, ...second.holes] };
    return {
      ...routing,
      loops: routing.loops.flatMap((loop) => (loop === first ? [joined] : loop === second ? [] : [loop])),
      rounds: routing.rounds.map((round) => ({ ...round, loops: round.loops.filter((id) => id !== second.id) })),
      holes: routing.holes.map((hole) => {
        return second.holes.includes(hole.id)
          ? { ...hole, seat: { in: 'loop', loop: first.id, key: hole.id } as const }
          : hole;
      }),
    };
  });
}

function turned(hole: Hole): Hole {
  const { back } = hole.tees;
  if (!hole.green || !back) return hole;
  return {
    ...hole,
    tees: { ...hole.tees, back: hole.green.centre },
    turnPoints: [...hole.turnPoints].reverse(),
    green: { ...hole.green, centre: back },
  };
}

function reverseLoop(plan: Plan, random: Random): Plan {
  return withRouting(plan, (routing) => {
    const chosen = pick(routing.loops, random);
    if (!chosen) return routing;
    return {
      ...routing,
      loops: routing.loops.map((loop) => (loop === chosen ? { ...loop, holes: [...loop.holes].reverse() } : loop)),
      holes: routing.holes.map((hole) => (chosen.holes.includes(hole.id) ? turned(hole) : hole)),
    };
  });
}

/** Its holes go to the tray; rounds lose it. */
function removeLoop(plan: Plan, random: Random): Plan {
  return withRouting(plan, (routing) => {
    const chosen = pick(routing.loops, random);
    if (!chosen || routing.loops.length < 2) return routing;
    return {
      ...routing,
      loops: routing.loops.filter((loop) => loop !== chosen),
      rounds: routing.rounds.map((round) => ({ ...round, loops: round.loops.filter((id) => id !== chosen.id) })),
      holes: routing.holes.map((hole) => {
        return chosen.holes.includes(hole.id) ? { ...hole, seat: { in: 'spare', key: hole.id } as const } : hole;
      }),
      spare: [...routing.spare, ...chosen.holes],
    };
  });
}

/** Two holes change the ground they lie on. */
function exchange(plan: Plan, random: Random): Plan {
  return withRouting(plan, (routing) => {
    const [one, two] = [pick(routing.holes, random), pick(routing.holes, random)];
    if (!one || !two) return routing;
    const on = (hole: Hole, { tees, turnPoints, green, waypoints }: Hole): Hole => {
      const { green: _, ...rest } = hole;
      return { ...rest, tees, turnPoints, waypoints, ...(green && { green }) };
    };
    const holes = routing.holes.map((hole) => (hole === one ? on(one, two) : hole === two ? on(two, one) : hole));
    return { ...routing, holes };
  });
}

/** A hole nobody has seen before, in the order of ids. */
function drawHole(plan: Plan, random: Random): Plan {
  return withRouting(plan, (routing) => {
    const loop = pick(routing.loops, random);
    const like = pick(routing.holes, random);
    const id = `z${routing.holes.length}`;
    if (!loop || !like || routing.holes.length > 30 || routing.holes.some((hole) => hole.id === id)) return routing;
    const hole: Hole = { ...like, id, seat: { in: 'loop', loop: loop.id, key: id }, relations: [] };
    return withHoleIn(routing, loop.id, hole);
  });
}

function withHoleIn(routing: Routing, loopId: string, hole: Hole): Routing {
  return {
    ...routing,
    loops: routing.loops.map((loop) => (loop.id === loopId ? { ...loop, holes: [...loop.holes, hole.id] } : loop)),
    holes: [...routing.holes, hole].sort((a, b) => (a.id < b.id ? -1 : 1)),
  };
}

/** For tests: changes to loops and to which hole lies where. */
export const LOOP_EDITS: readonly ((plan: Plan, random: Random) => Plan)[] = [
  joinLoops,
  reverseLoop,
  removeLoop,
  exchange,
  drawHole,
];
