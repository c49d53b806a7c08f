import type { Analysis, HoleFigures } from '@loopwright/analysis';
import { type Hole, type HoleId, numberHoles, type Routing } from '@loopwright/model';
import { type HoleView, toHoleView } from './hole-view.ts';

interface Kept {
  readonly hole: Hole;
  readonly figures: HoleFigures;
  readonly label: string;
  readonly view: HoleView;
}

/** Turns a routing into what is drawn; a hole that did not change keeps its view, so that it is not drawn anew. */
export type HoleViews = (routing: Routing, analysis: Analysis) => readonly HoleView[];

/** A maker of hole views with a memory of its own. Removed holes are not drawn. O(changed holes). */
export function openHoleViews(): HoleViews {
  let kept = new Map<HoleId, Kept>();
  let last: readonly HoleView[] = [];
  return (routing, analysis) => {
    const numbers = numberHoles(routing);
    const now = new Map<HoleId, Kept>();
    for (const hole of routing.holes) {
      const figures = analysis.holes.get(hole.id);
      if (!figures || hole.seat.in === 'removed') continue;
      const label = String(numbers.get(hole.id) ?? `S${routing.spare.indexOf(hole.id) + 1}`);
      const was = kept.get(hole.id);
      const same = was && was.hole === hole && was.figures === figures && was.label === label;
      now.set(hole.id, same ? was : { hole, figures, label, view: toHoleView(hole, figures, label) });
    }
    const views = [...now.values()].map(({ view }) => view);
    const unchanged = views.length === last.length && views.every((view, index) => view === last[index]);
    kept = now;
    if (!unchanged) last = views;
    return last;
  };
}
