import type { HoleId, Plan } from '@loopwright/model';
import { BOARD_EDITS } from './random-board-edit.ts';
import { HOLE_EDITS } from './random-hole-edit.ts';
import { LOOP_EDITS } from './random-loop-edit.ts';
import { pick, type Random, withRouting } from './random-pick.ts';
import { SITE_EDITS } from './random-site-edit.ts';

/** For tests: one random change as people make them. Untouched holes and features keep their identity. */
export function randomEdit(plan: Plan, random: Random): Plan {
  const round = [swap, takeOut, bringBack, splitLoop, changeRounds, ...LOOP_EDITS];
  const edits = [...HOLE_EDITS, ...round, ...BOARD_EDITS, ...SITE_EDITS];
  const edit = pick(edits, random) ?? swap;
  return edit(plan, random);
}

function renamed(order: readonly HoleId[], a: HoleId, b: HoleId): readonly HoleId[] {
  return order.map((hole) => (hole === a ? b : hole === b ? a : hole));
}

function swap(plan: Plan, random: Random): Plan {
  return withRouting(plan, (routing) => {
    const played = routing.loops.flatMap(({ holes }) => holes);
    const a = pick(played, random);
    const b = pick(played, random);
    if (a === undefined || b === undefined) return routing;
    return { ...routing, loops: routing.loops.map((loop) => ({ ...loop, holes: renamed(loop.holes, a, b) })) };
  });
}

function takeOut(plan: Plan, random: Random): Plan {
  return withRouting(plan, (routing) => {
    const chosen = pick(
      routing.loops.flatMap(({ holes }) => holes),
      random,
    );
    if (chosen === undefined) return routing;
    return {
      ...routing,
      loops: routing.loops.map((loop) => ({ ...loop, holes: loop.holes.filter((hole) => hole !== chosen) })),
      holes: routing.holes.map((hole) =>
        hole.id === chosen ? { ...hole, seat: { in: 'spare', key: hole.id } as const } : hole,
      ),
      spare: [...routing.spare, chosen],
    };
  });
}

function bringBack(plan: Plan, random: Random): Plan {
  return withRouting(plan, (routing) => {
    const chosen = pick(routing.spare, random);
    const loop = pick(routing.loops, random);
    if (chosen === undefined || !loop) return routing;
    const seat = { in: 'loop', loop: loop.id, key: chosen } as const;
    return {
      ...routing,
      loops: routing.loops.map((other) => (other === loop ? { ...loop, holes: [...loop.holes, chosen] } : other)),
      holes: routing.holes.map((hole) => (hole.id === chosen ? { ...hole, seat } : hole)),
      spare: routing.spare.filter((hole) => hole !== chosen),
    };
  });
}

/** The second half of a loop becomes one of its own, from no base. */
function splitLoop(plan: Plan, random: Random): Plan {
  return withRouting(plan, (routing) => {
    const loop = pick(routing.loops, random);
    if (!loop || loop.holes.length < 2 || routing.loops.length > 5) return routing;
    const half = loop.holes.length >> 1;
    const first = { ...loop, holes: loop.holes.slice(0, half) };
    const second = { id: `${loop.id}-${routing.loops.length}`, name: 'Half', holes: loop.holes.slice(half) };
    const loops = routing.loops.flatMap((other) => (other === loop ? [first, second] : [other]));
    const rounds = routing.rounds.map((round) => ({
      ...round,
      loops: round.loops.flatMap((id) => (id === loop.id ? [id, second.id] : [id])),
    }));
    return { ...routing, loops, rounds };
  });
}

/** A round turned about, and another of two loops beside it. */
function changeRounds(plan: Plan, random: Random): Plan {
  return withRouting(plan, (routing) => {
    const [first, ...others] = routing.rounds;
    const loops = [pick(routing.loops, random), pick(routing.loops, random)].flatMap((loop) => loop?.id ?? []);
    if (!first) return routing;
    const turned = { ...first, loops: [...first.loops].reverse() };
    const another = { id: 'other', name: 'Other', loops: [...new Set(loops)] };
    return { ...routing, rounds: [turned, ...(others.length === 0 ? [another] : [])] };
  });
}
