import type { HoleId, Plan, Routing } from '@loopwright/model';
import { playingOrder } from '@loopwright/model';
import { loopFigures } from '../card/loop-figures.ts';
import { roundFigures } from '../card/round-figures.ts';
import type { HoleFigures, LoopFigures, RoundFigures, WalkFigures } from '../figures.ts';
import { type PlannedWalk, walkKey, walksOfLoop, walksOfRound } from '../walk/walk-plan.ts';
import type { BoardInputs } from './board-inputs.ts';
import type { HoleStage } from './hole-stage.ts';
import { openMemory } from './memory.ts';
import type { WalkStage } from './walk-stage.ts';

export interface TotalStage {
  readonly loops: readonly LoopFigures[];
  readonly rounds: readonly RoundFigures[];
}

/** Totals of loops and rounds; those of which nothing changed keep the same object. */
export function openTotalStage() {
  const loopsOf = openMemory<LoopFigures>();
  const roundsOf = openMemory<RoundFigures>();
  return (plan: Plan, routing: Routing, holes: HoleStage, walks: WalkStage, board: BoardInputs): TotalStage => {
    const { teeSets, settings } = board;
    const loops = routing.loops.map((loop) => {
      const played = figuresOf(loop.holes, holes);
      const walked = walksNamed(walksOfLoop(loop, plan.site.bases), walks);
      const inputs = [teeSets, settings, played.length, ...played, ...walked];
      return loopsOf.recall(loop.id, inputs, () => loopFigures(loop, played, walked, teeSets, settings));
    });
    const rounds = routing.rounds.map((round) => {
      const played = figuresOf(playingOrder(routing, round), holes);
      const walked = walksNamed(walksOfRound(plan, routing, round), walks);
      const inputs = [teeSets, played.length, ...played, ...walked];
      return roundsOf.recall(round.id, inputs, () => roundFigures(round, played, walked, teeSets));
    });
    for (const memory of [loopsOf, roundsOf]) memory.forgetUnused();
    return { loops, rounds };
  };
}

function figuresOf(ids: readonly HoleId[], { figures }: HoleStage): readonly HoleFigures[] {
  return ids.flatMap((id) => figures.get(id) ?? []);
}

function walksNamed(planned: readonly PlannedWalk[], { byKey }: WalkStage): readonly WalkFigures[] {
  return planned.flatMap((walk) => byKey.get(walkKey(walk)) ?? []);
}
