import { LIMITS, type LoopId, parseName, type Round } from '@loopwright/model';
import type { Write } from '../cells.ts';

/** The name and loops of a round; loops that are not there are left out. */
export function frameOfRound(group: string, round: Omit<Round, 'id'>, known: ReadonlySet<LoopId>): readonly Write[] {
  const loops = playable(round.loops, known);
  return [
    { root: 'rounds', group, part: 'name', value: parseName(round.name, LIMITS.name) ?? 'Round' },
    { root: 'rounds', group, part: 'loops', value: loops },
  ];
}

/** The loops of a list that are there, as many as a round can have. */
export function playable(loops: readonly LoopId[], known: ReadonlySet<LoopId>): readonly LoopId[] {
  return loops.filter((loop) => known.has(loop)).slice(0, LIMITS.loopsPerRound);
}
