import { type Box, boundsOf, grown, pointAlong, polylineLength } from '@loopwright/geometry';
import type { CanvasPoint, Hole, Plan, Routing, SitePoint } from '@loopwright/model';
import type { Consequences, Place } from '../board/parts.ts';
import { openSlot, type Watched } from '../live/slot.ts';
import { cornersOf } from './images/corners.ts';
import { outerPoints } from './outer-points.ts';
import { broughtIntoView, type CanvasSize, fitted, panned, type View, zoomed } from './site-transform.ts';

/** How this person looks at the drawing; others look at it their own way. */
export interface Viewpoint {
  readonly view: Watched<View>;
  readonly size: Watched<CanvasSize>;
  resize(size: CanvasSize): void;
  pan(by: CanvasPoint): void;
  /** About the pointer; about the middle when there is none. */
  zoom(factor: number, about?: CanvasPoint): void;
  /** All of the site with all its holes. */
  fit(plan: Plan, routing: Routing | undefined): void;
  /** The holes of the round, with boundary and spare holes where they lie close about them: what one sees at first. */
  firstLook(plan: Plan, routing: Routing | undefined): void;
  show(place: Place, at: Consequences): void;
}

/** Paper left around what is shown, in pixels. */
const MARGIN = 30;

/** What the instruments cover of the left edge, in pixels; on a phone they are folded. */
const INSTRUMENTS = { wide: 44, from: 400 };

/** What would make the holes of the round this much smaller is left to 'show the whole site'. */
const FAR_ABOUT = 1.3;

/** With fewer holes than a loop of six the land for the others matters as much: only a site without end is left out. */
const FEW_HOLES = 6;
const FAR_ABOUT_FEW = 8;

/** The least ground that is looked at, in metres across: a single place alone says nothing of the land. */
const LEAST_ACROSS = 300;

export function openViewpoint(): Viewpoint {
  const view = openSlot<View>({ scale: 0.5, x: 0, y: 0 });
  const size = openSlot<CanvasSize>({ width: 0, height: 0 });
  // Looks at everything again when the window or a panel changes, until the person moves the drawing.
  let lookAgain: (() => void) | undefined;
  const look = (take: () => View | undefined) => {
    lookAgain = () => {
      const next = take();
      if (next) view.set(next);
    };
    lookAgain();
  };
  const move = (next: View) => {
    lookAgain = undefined;
    view.set(next);
  };
  const allOf = (points: readonly SitePoint[]) =>
    points.length > 0 ? besideInstruments(widened(boundsOf(points)), size.get()) : undefined;
  const fit = (plan: Plan, routing: Routing | undefined) =>
    look(() => allOf([...sitePoints(plan), ...holePoints(plan, routing)]));
  /** Bare land has nothing to be fitted: its origin comes to the middle. */
  const middle = (): View => ({ scale: 0.5, x: size.get().width / 2, y: size.get().height / 2 });
  const firstLook = (plan: Plan, routing: Routing | undefined) =>
    look(() => {
      const laid = (routing?.holes ?? []).filter(({ seat }) => seat.in === 'loop').length;
      const holes = laid > 0 ? allOf(holePoints(plan, routing, (seat) => seat === 'loop')) : undefined;
      const all = allOf([...sitePoints(plan), ...holePoints(plan, routing)]);
      const far = laid < FEW_HOLES ? FAR_ABOUT_FEW : FAR_ABOUT;
      return holes && all && holes.scale > all.scale * far ? holes : (all ?? middle());
    });
  return {
    view,
    size,
    resize: (next) => {
      const was = size.get();
      size.set(next);
      if (lookAgain) return lookAgain();
      // What was in the middle stays in the middle.
      const by = { x: (next.width - was.width) / 2, y: (next.height - was.height) / 2 };
      if (was.width > 0) view.set(panned(view.get(), by));
    },
    pan: (by) => move(panned(view.get(), by)),
    zoom: (factor, about) => {
      const { width, height } = size.get();
      move(zoomed(view.get(), factor, about ?? { x: width / 2, y: height / 2 }));
    },
    fit,
    firstLook,
    show: (place, at) => {
      if (place.kind === 'all') return fit(at.plan, at.routing);
      const point = pointOf(place, at);
      const next = point && broughtIntoView(view.get(), point, size.get());
      if (next && next !== view.get()) move(next);
    },
  };
}

function widened(box: Box): Box {
  const short = LEAST_ACROSS - Math.max(box.maxX - box.minX, box.maxY - box.minY);
  return short > 0 ? grown(box, short / 2) : box;
}

/** The boundary; without one the images; without either what is known to lie on the land. */
function sitePoints({ site }: Plan): readonly SitePoint[] {
  if (site.boundary) return site.boundary.outlines.flat();
  if (site.images.length > 0) return site.images.flatMap(cornersOf);
  return [...site.marks.map(({ at }) => at), ...site.features.flatMap(({ geometry }) => outerPoints(geometry))];
}

type Seat = Hole['seat']['in'];

const onThePlan = (seat: Seat) => seat !== 'removed';

function holePoints(plan: Plan, routing: Routing | undefined, taken = onThePlan): readonly SitePoint[] {
  const bases = plan.site.bases.map(({ apron }) => apron);
  const holes = (routing?.holes ?? [])
    .filter(({ seat }) => taken(seat.in))
    .flatMap(({ tees, turnPoints, green }) => [
      ...Object.values(tees),
      ...turnPoints.map(({ at }) => at),
      ...(green ? [green.centre] : []),
    ]);
  return [...bases, ...holes];
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

/** All of `bounds` where the instruments leave it free. */
function besideInstruments(bounds: Box, { width, height }: CanvasSize): View {
  const covered = width < INSTRUMENTS.from ? 0 : INSTRUMENTS.wide;
  return panned(fitted(bounds, { width: width - covered, height }, MARGIN), { x: covered, y: 0 });
}
