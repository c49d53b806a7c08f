import { openAnalysis } from '@loopwright/analysis';
import type { Routing } from '@loopwright/model';
import type { Consequences } from '../board/parts.ts';
import type { HoleView } from '../drawing/hole-view.ts';
import { openHoleViews } from '../drawing/hole-views.ts';
import { toSheetLine } from '../drawing/site-transform.ts';
import { openSteadyList } from '../drawing/steady-list.ts';
import type { DayStart } from './kept-starts.ts';
import { holesMovedSince, type SiteGhost, siteMovedSince } from './moved-since.ts';

/** What lay elsewhere as the day began, in sheet units. */
export interface DayPicture {
  readonly holes: readonly HoleView[];
  readonly things: readonly { readonly key: string; readonly line: readonly number[]; readonly closed: boolean }[];
}

/**
 * A maker of that picture with a memory of its own: the morning is worked out once for each routing; as the plan moves
 * only what has moved is looked up, and the same picture comes back while that is the same.
 */
export function openDayPicture(start: DayStart): (now: Consequences) => DayPicture {
  const { analyse } = openAnalysis();
  const viewsOf = openHoleViews();
  const steadyHoles = openSteadyList<HoleView>();
  const morning = new Map<string, ReadonlyMap<string, HoleView>>();
  let last: { readonly picture: DayPicture; readonly site: Consequences['plan']['site'] } | undefined;

  const viewsThen = (then: Routing): ReadonlyMap<string, HoleView> => {
    const known =
      morning.get(then.id) ?? new Map(viewsOf(then, analyse(start.plan, then.id)).map((view) => [view.id, view]));
    morning.set(then.id, known);
    return known;
  };
  return ({ plan, routing }) => {
    const then = start.plan.routings.find(({ id }) => id === routing.id);
    const views = then && viewsThen(then);
    const holes = steadyHoles(then ? holesMovedSince(then, routing).flatMap(({ id }) => views?.get(id) ?? []) : []);
    if (last && last.site === plan.site && last.picture.holes === holes) return last.picture;
    const things =
      last?.site === plan.site ? last.picture.things : siteMovedSince(start.plan.site, plan.site).map(toThing);
    last = { picture: { holes, things }, site: plan.site };
    return last.picture;
  };
}

const toThing = ({ key, points, closed }: SiteGhost) => ({ key, line: toSheetLine(points), closed });
