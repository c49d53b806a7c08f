import { loopsOf, playingOrder } from '@loopwright/model';
import type { Finding, WalkFigures } from '../figures.ts';
import { tiersOf } from '../findings/tier.ts';
import type { RoundContext } from '../round-context.ts';
import { checkWalkLength, checkWalksInAll, walkBetweenLoops } from './length-findings.ts';

/** Walks that are too long: between two holes, from loop to loop, and all of a round together. */
export function checkWalks(context: RoundContext): readonly Finding[] {
  const { routing, settings } = context;
  const byKey = new Map(context.walks.map((walk) => [walk.key, walk]));
  const withinLoop = tiersOf('long-walk', settings);
  const betweenLoops = tiersOf('long-walk-between-loops', settings);
  const findings = new Map<string, Finding>();
  const keep = (found: readonly Finding[]) => {
    for (const finding of found) findings.set(finding.key, finding);
  };
  for (const loop of routing.loops) {
    for (const walk of walksInLoop(loop.holes, byKey)) keep(checkWalkLength(walk, 'long-walk', withinLoop));
  }
  for (const round of routing.rounds) {
    const onward = walksOnward(context, byKey, round);
    for (const walk of onward) keep(checkWalkLength(walk, 'long-walk-between-loops', betweenLoops));
    const within = loopsOf(routing, round).flatMap(({ holes }) => walksInLoop(holes, byKey));
    keep(checkWalksInAll(round, playingOrder(routing, round), [...within, ...onward], settings));
  }
  return [...findings.values()];
}

function walksInLoop(holes: readonly string[], byKey: ReadonlyMap<string, WalkFigures>): readonly WalkFigures[] {
  return holes.slice(1).flatMap((hole, place) => byKey.get(`${holes[place]}>${hole}`) ?? []);
}

function walksOnward(
  { routing, figures }: RoundContext,
  byKey: ReadonlyMap<string, WalkFigures>,
  round: RoundContext['routing']['rounds'][number],
): readonly WalkFigures[] {
  const loops = loopsOf(routing, round).filter(({ holes }) => holes.length > 0);
  return loops.slice(1).flatMap((next, place) => {
    const loop = loops[place];
    const last = figures.get(loop?.holes[loop.holes.length - 1] ?? '');
    const first = figures.get(next.holes[0] ?? '');
    if (!loop || !last || !first) return [];
    return walkBetweenLoops(byKey, last, first, loop.id) ?? [];
  });
}
