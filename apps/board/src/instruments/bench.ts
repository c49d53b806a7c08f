import type { SitePoint } from '@loopwright/model';
import { makeId } from '@loopwright/model';
import type { Me, Reading } from '../board/parts.ts';
import type { Viewpoint } from '../drawing/viewpoint.ts';
import type { BoardSession } from '../live/board-session.ts';
import type { Frame } from '../live/frame.ts';
import type { Watched } from '../live/slot.ts';
import type { Bench, Snapped, SnapWishes } from './instrument.ts';

/** What of the session instruments work with. */
export type BenchSession = Pick<
  BoardSession,
  'frame' | 'writtenPlan' | 'selection' | 'edit' | 'drag' | 'drop' | 'select' | 'say'
>;

export interface BenchParts {
  readonly session: BenchSession;
  readonly viewpoint: Viewpoint;
  readonly reading: Watched<Reading>;
  readonly me: Me;
  /** Numbers in [0, 1) for fresh ids. */
  readonly random: () => number;
  readonly snap: (at: SitePoint, wishes: SnapWishes) => Snapped;
  readonly putAway: () => void;
}

/**
 * The bench an instrument works on: the session as an instrument sees it.
 *
 * @throws Error when something is asked of a board without a routing: no instrument is handed out there
 */
export function openBench(parts: BenchParts): Bench {
  const { session, viewpoint } = parts;
  const frame = (): Frame => {
    const now = session.frame.get();
    if (!now) throw new Error('openBench: a board without a routing has no instruments');
    return now;
  };
  let isShowing = false;
  return {
    plan: () => frame().plan,
    written: session.writtenPlan.get,
    routing: () => frame().routing,
    analysis: () => frame().analysis,
    reading: parts.reading.get,
    selection: session.selection.get,
    me: () => parts.me,
    scale: () => viewpoint.view.get().scale,
    freshId: (letter) => makeId(letter, parts.random),
    snap: parts.snap,
    show: (edit) => {
      // Nothing in the hand is said once: a pointer that only looks for a place must not cost a picture of the plan.
      if (edit || isShowing) session.drag(edit);
      isShowing = edit !== undefined;
    },
    write: () => {
      isShowing = false;
      return session.drop();
    },
    edit: session.edit,
    select: session.select,
    say: session.say,
    putAway: parts.putAway,
  };
}
