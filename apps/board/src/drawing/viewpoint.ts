import { boundsOf, pointAlong, polylineLength } from '@loopwright/geometry';
import type { CanvasPoint, Plan, Routing, SitePoint } from '@loopwright/model';
import type { Consequences, Place } from '../board/parts.ts';
import { openSlot, type Watched } from '../live/slot.ts';
import { broughtIntoView, type CanvasSize, fitted, panned, type View, zoomed } from './site-transform.ts';

/** How this person looks at the drawing; others look at it their own way. */
export interface Viewpoint {
  readonly view: Watched<View>;
  readonly size: Watched<CanvasSize>;
  resize(size: CanvasSize): void;
  pan(by: CanvasPoint): void;
  /** About the pointer; about the middle when there is none. */
  zoom(factor: number, about?: CanvasPoint): void;
  /** All of the site with all its holes. Done by itself when the plan first comes in. */
  fit(plan: Plan, routing: Routing | undefined): void;
  show(place: Place, at: Consequences): void;
}

/** Paper left around the site when all of it is shown, in pixels. */
const MARGIN = 48;

export function openViewpoint(): Viewpoint {
  const view = openSlot<View>({ scale: 0.5, x: 0, y: 0 });
  const size = openSlot<CanvasSize>({ width: 0, height: 0 });
  const fit = (plan: Plan, routing: Routing | undefined) => {
    const points = planPoints(plan, routing);
    if (points.length > 0) view.set(fitted(boundsOf(points), size.get(), MARGIN));
  };
  return {
    view,
    size,
    resize: (next) => {
      const was = size.get();
      size.set(next);
      // What was in the middle stays in the middle.
      const by = { x: (next.width - was.width) / 2, y: (next.height - was.height) / 2 };
      if (was.width > 0) view.set(panned(view.get(), by));
    },
    pan: (by) => view.set(panned(view.get(), by)),
    zoom: (factor, about) => {
      const { width, height } = size.get();
      view.set(zoomed(view.get(), factor, about ?? { x: width / 2, y: height / 2 }));
    },
    fit,
    show: (place, at) => {
      if (place.kind === 'all') return fit(at.plan, at.routing);
      const point = pointOf(place, at);
      if (point) view.set(broughtIntoView(view.get(), point, size.get()));
    },
  };
}

function planPoints(plan: Plan, routing: Routing | undefined): readonly SitePoint[] {
  const boundary = plan.site.boundary?.outlines.flat() ?? [];
  const bases = plan.site.bases.map(({ apron }) => apron);
  const holes = (routing?.holes ?? [])
    .filter(({ seat }) => seat.in !== 'removed')
    .flatMap(({ tees, turnPoints, green }) => [
      ...Object.values(tees),
      ...turnPoints.map(({ at }) => at),
      ...(green ? [green.centre] : []),
    ]);
  return [...boundary, ...bases, ...holes];
}

/** The middle of a thing on the plan; `undefined` for what has no place. */
function pointOf(place: Place, { analysis }: Consequences): SitePoint | undefined {
  if (place.kind === 'point') return place.at;
  if (place.kind === 'hole') return middleOf(analysis.holes.get(place.hole)?.centreline);
  if (place.kind === 'walk') return middleOf(analysis.walks.find(({ key }) => key === place.key)?.path);
  if (place.kind === 'all') return undefined;
  const found = analysis.findings.find(({ key }) => key === place.finding)?.place;
  if (found?.type === 'point') return found.at;
  return found?.type === 'line' ? middleOf(found.points) : undefined;
}

function middleOf(line: readonly SitePoint[] | undefined): SitePoint | undefined {
  return line && line.length > 0 ? pointAlong(line, polylineLength(line) / 2) : undefined;
}
