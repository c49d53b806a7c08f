import type { Hole, HoleId, Routing } from '@loopwright/model';
import { holeFigures } from '../card/hole-figures.ts';
import { type HoleReach, holeReach } from '../clearance/hole-reach.ts';
import type { HoleFigures } from '../figures.ts';
import { type CrossedLine, crossedLine } from '../walk/line-crossings.ts';
import type { BoardInputs } from './board-inputs.ts';
import { openMemory } from './memory.ts';

/** Every hole on the plan, each made ready for all that is asked of it. */
export interface HoleStage {
  readonly holes: ReadonlyMap<HoleId, Hole>;
  readonly figures: ReadonlyMap<HoleId, HoleFigures>;
  reach(hole: HoleId): HoleReach | undefined;
  line(hole: HoleId): CrossedLine | undefined;
}

/** Figures per hole, worked out anew only for holes that were replaced. Removed holes are left out. */
export function openHoleStage(): (routing: Routing, board: BoardInputs) => HoleStage {
  const figuresOf = openMemory<HoleFigures>();
  const reachOf = openMemory<HoleReach | undefined>();
  const lineOf = openMemory<CrossedLine | undefined>();
  return (routing, { settings, teeSets, limits }) => {
    const holes = new Map<HoleId, Hole>();
    const figures = new Map<HoleId, HoleFigures>();
    for (const hole of routing.holes) {
      if (hole.seat.in === 'removed') continue;
      holes.set(hole.id, hole);
      const make = () => holeFigures(hole, teeSets, settings);
      figures.set(hole.id, figuresOf.recall(hole.id, [hole, teeSets, settings], make));
    }
    for (const memory of [figuresOf, reachOf, lineOf]) memory.forgetUnused();
    return {
      holes,
      figures,
      reach(id) {
        const hole = figures.get(id);
        return hole && reachOf.recall(id, [hole, limits], () => holeReach(hole, limits));
      },
      line(id) {
        const hole = figures.get(id);
        return hole && lineOf.recall(id, [hole], () => crossedLine(hole));
      },
    };
  };
}
