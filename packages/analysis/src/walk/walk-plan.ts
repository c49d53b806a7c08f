import type { Base, HoleId, Loop, LoopId, Plan, Round, Routing } from '@loopwright/model';
import { loopsOf } from '@loopwright/model';

/** An end of a walk by name: which hole or base. */
export type EndName = { readonly hole: HoleId } | { readonly base: Base };

/** A walk that a routing asks for, before its ends are looked up. */
export interface PlannedWalk {
  readonly loop: LoopId;
  readonly from: EndName;
  readonly to: EndName;
}

/** The name of a walk for as long as its two ends follow each other. */
export function walkKey({ from, to }: PlannedWalk): string {
  const name = (end: EndName) => ('hole' in end ? end.hole : end.base.id);
  return `${name(from)}>${name(to)}`;
}

/**
 * The walks of a routing, loop after loop: from the base to the first tee, between holes, from the last green to the
 * base; then on from a loop to those that follow it in a round, unless one base serves both. Each once.
 */
export function walksOf(plan: Plan, routing: Routing): readonly PlannedWalk[] {
  const bases = plan.site.bases;
  return routing.loops.flatMap((loop) => [
    ...walksOfLoop(loop, bases),
    ...loopsAfter(loop, routing).flatMap((next) => walkOn(loop, next, bases)),
  ]);
}

/** The walks of one round in the order walked. */
export function walksOfRound(plan: Plan, routing: Routing, round: Round): readonly PlannedWalk[] {
  const bases = plan.site.bases;
  const loops = loopsOf(routing, round).filter(({ holes }) => holes.length > 0);
  return loops.flatMap((loop, place) => {
    const next = loops[place + 1];
    return [...walksOfLoop(loop, bases), ...(next ? walkOn(loop, next, bases) : [])];
  });
}

const baseOf = ({ base }: Loop, bases: readonly Base[]) => bases.find(({ id }) => id === base);

/** The walks within a loop, to and from its base. */
export function walksOfLoop(loop: Loop, bases: readonly Base[]): readonly PlannedWalk[] {
  const { id, holes } = loop;
  const base = baseOf(loop, bases);
  const ends: EndName[] = holes.map((hole) => ({ hole }));
  const stops = base && ends.length > 0 ? [{ base }, ...ends, { base }] : ends;
  return stops.slice(1).flatMap((to, i) => {
    const from = stops[i];
    return from ? [{ loop: id, from, to }] : [];
  });
}

function walkOn(loop: Loop, next: Loop, bases: readonly Base[]): readonly PlannedWalk[] {
  const base = baseOf(loop, bases);
  const nextBase = baseOf(next, bases);
  const last = loop.holes[loop.holes.length - 1];
  const first = next.holes[0];
  if (last === undefined || first === undefined) return [];
  if (base && nextBase && base.id === nextBase.id) return [];
  return [
    { loop: loop.id, from: base ? { base } : { hole: last }, to: nextBase ? { base: nextBase } : { hole: first } },
  ];
}

/** Loops that are played straight after this one in some round, each once. Loops without holes are passed over. */
export function loopsAfter(loop: Loop, routing: Routing): readonly Loop[] {
  const after = routing.rounds.flatMap((round) => {
    const played = loopsOf(routing, round).filter(({ id, holes }) => id === loop.id || holes.length > 0);
    return played.flatMap(({ id }, place) => {
      const next = id === loop.id ? played[place + 1] : undefined;
      return next ? [next] : [];
    });
  });
  return [...new Set(after)];
}
