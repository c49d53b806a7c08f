import type { Analysis, WalkFigures } from '@loopwright/analysis';
import { bearingOf, minus, pointAlong, polylineLength } from '@loopwright/geometry';
import type { HoleId, SitePoint } from '@loopwright/model';
import { toSheetLine, turnDegrees } from './site-transform.ts';

/** A walk as a dashed line with an arrow at its end. */
export interface WalkView {
  readonly key: string;
  readonly line: readonly number[];
  readonly path: readonly SitePoint[];
  readonly end: SitePoint;
  /** Degrees clockwise the arrow points; absent on a walk too short for one. */
  readonly turn?: number;
  readonly holes: readonly HoleId[];
}

/** Below this the arrow would be all there is, in metres. */
const SHORTEST_WITH_ARROW = 12;

export function toWalkView(walk: WalkFigures): WalkView | undefined {
  const end = walk.path.at(-1);
  if (!end || walk.path.length < 2) return undefined;
  const length = polylineLength(walk.path);
  const before = pointAlong(walk.path, Math.max(0, length - SHORTEST_WITH_ARROW / 2));
  const holes = [walk.from, walk.to].flatMap((place) => ('hole' in place ? [place.hole] : []));
  return {
    key: walk.key,
    line: toSheetLine(walk.path),
    path: walk.path,
    end,
    ...(length >= SHORTEST_WITH_ARROW ? { turn: turnDegrees(bearingOf(minus(end, before))) } : {}),
    holes,
  };
}

/** A maker of walk views that keeps those of unchanged walks. */
export function openWalkViews(): (analysis: Analysis) => readonly WalkView[] {
  let kept = new Map<string, { readonly walk: WalkFigures; readonly view: WalkView }>();
  let last: readonly WalkView[] = [];
  return (analysis) => {
    const now: typeof kept = new Map();
    for (const walk of analysis.walks) {
      const was = kept.get(walk.key);
      const view = was && was.walk.path === walk.path ? was.view : toWalkView(walk);
      if (view) now.set(walk.key, { walk, view });
    }
    const views = [...now.values()].map(({ view }) => view);
    const unchanged = views.length === last.length && views.every((view, index) => view === last[index]);
    kept = now;
    if (!unchanged) last = views;
    return last;
  };
}
