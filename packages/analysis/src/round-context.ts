import type { Hole, HoleId, Plan, Routing, Settings } from '@loopwright/model';
import type { FeatureIndex } from './feature-index.ts';
import type { HoleFigures, LoopFigures, RoundFigures, WalkFigures } from './figures.ts';

/** What a check of the whole round is given: the plan and the figures that are already worked out. */
export interface RoundContext {
  readonly plan: Plan;
  readonly routing: Routing;
  readonly settings: Settings;
  /** Figures of every hole on the plan, spare ones too. */
  readonly figures: ReadonlyMap<HoleId, HoleFigures>;
  /** The plan's own holes: verdicts, seats. */
  readonly holes: ReadonlyMap<HoleId, Hole>;
  /** In playing order, loop after loop. */
  readonly walks: readonly WalkFigures[];
  /** Holes in play: every loop's holes, in the routing's order. */
  readonly order: readonly HoleId[];
  readonly loops: readonly LoopFigures[];
  readonly rounds: readonly RoundFigures[];
  /** Places in the first round that plays them. */
  readonly numbers: ReadonlyMap<HoleId, number>;
  readonly features: FeatureIndex;
}
