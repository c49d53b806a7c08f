import {
  type Hole,
  type HoleId,
  holeOf,
  type Plan,
  type RoutingId,
  type Settings,
  type SiteMarkId,
  settingsOf,
  type TeeSet,
  toMillimetre,
} from '@loopwright/model';
import { holeFigures } from '../card/hole-figures.ts';
import type { HoleFigures } from '../figures.ts';
import { isSameList } from '../incremental/memory.ts';
import { findPartNearest, type MarkPart } from './mark-parts.ts';

/** A hole in play that has taken up a site mark, and how far its part lies from it, metres to the millimetre. */
export interface MarkUse {
  readonly routing: RoutingId;
  readonly hole: HoleId;
  readonly part: MarkPart;
  readonly distance: number;
}

export type MarkUses = ReadonlyMap<SiteMarkId, readonly MarkUse[]>;

/**
 * Which hole of which routing has taken up each site mark: one entry for a hole, in the order of routings and play.
 * A mark that nobody uses has an empty list. The distance is the board's setting `mark-taken-up`, and the rule is that
 * of the finding `mark-unused`: only holes in play count. Source: common practice, no source.
 *
 * Cost: the figures of every hole of every routing, O(holes × marks) after that. For every frame use `openMarkUses`.
 */
export function markUses(plan: Plan): MarkUses {
  return openMarkUses()(plan);
}

/** The same with a memory of its own: a hole is measured again only when it, the tee sets or the settings changed. */
export function openMarkUses(): (plan: Plan) => MarkUses {
  let figuresOf = new WeakMap<Hole, HoleFigures>();
  let board: readonly unknown[] = [];
  return (plan) => {
    const now = boardOf(plan);
    if (!isSameList(board, now)) figuresOf = new WeakMap();
    board = now;
    const settings = settingsOf(plan.settings);
    return usesOf(plan, settings, (hole) => {
      const known = figuresOf.get(hole) ?? holeFigures(hole, plan.teeSets, settings);
      figuresOf.set(hole, known);
      return known;
    });
  };
}

/** What the figures of a hole depend on beside the hole. */
function boardOf({ teeSets, settings }: Plan): readonly unknown[] {
  const overrides = Object.entries(settings).sort(([a], [b]) => (a < b ? -1 : 1));
  return [...teeSets.flatMap(({ id, player }: TeeSet) => [id, player]), ...overrides.flat()];
}

function usesOf(plan: Plan, settings: Settings, figuresOf: (hole: Hole) => HoleFigures): MarkUses {
  const { marks } = plan.site;
  const limit = settings['mark-taken-up'];
  const uses = new Map<SiteMarkId, MarkUse[]>(marks.map(({ id }) => [id, []]));
  if (marks.length === 0) return uses;
  for (const routing of plan.routings) {
    for (const id of routing.loops.flatMap(({ holes }) => holes)) {
      const hole = holeOf(routing, id);
      if (!hole || hole.seat.in === 'removed') continue;
      const figures = figuresOf(hole);
      for (const mark of marks) {
        const nearest = findPartNearest(mark, figures);
        const distance = nearest && toMillimetre(nearest.distance);
        if (!nearest || distance === undefined || distance > limit) continue;
        uses.get(mark.id)?.push({ routing: routing.id, hole: id, part: nearest.part, distance });
      }
    }
  }
  return uses;
}
