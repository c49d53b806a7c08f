import { type Box, boundsOf } from '@loopwright/geometry';
import type { FeatureGeometry, SitePoint } from '@loopwright/model';
import type { Reading } from '../../board/parts.ts';
import { outerPoints } from '../../drawing/outer-points.ts';
import type { Viewpoint } from '../../drawing/viewpoint.ts';
import type { BoardSession } from '../../live/board-session.ts';
import type { Watched } from '../../live/slot.ts';
import { namesOf } from '../../reading/names.ts';
import type { Snapped, SnapWishes } from '../instrument.ts';
import { guidesFor } from './guides-for.ts';
import { pulled } from './pulled.ts';

interface SnapParts {
  readonly session: Pick<BoardSession, 'frame' | 'writtenPlan'>;
  readonly viewpoint: Viewpoint;
  readonly reading: Watched<Reading>;
  readonly isOff: () => boolean;
}

/** How near a guide pulls, in pixels: near enough to be meant, far enough to be easily met. */
const REACH_PIXELS = 12;

/** Pulls points to the guides of the board as it is now. */
export function openSnap({ session, viewpoint, reading, isOff }: SnapParts) {
  const boxes = new WeakMap<FeatureGeometry, Box>();
  const boxOf = (geometry: FeatureGeometry): Box => {
    const known = boxes.get(geometry) ?? boundsOf(outerPoints(geometry));
    boxes.set(geometry, known);
    return known;
  };
  return (at: SitePoint, wishes: SnapWishes): Snapped => {
    const frame = session.frame.get();
    if (!frame || isOff()) return { at };
    const reach = REACH_PIXELS / viewpoint.view.get().scale;
    const names = namesOf(frame.plan, frame.routing, reading.get().units);
    // What is half drawn is in the frame already, hole and outline alike: it must not pull at itself.
    const { site, routings } = session.writtenPlan.get();
    const written = routings.find(({ id }) => id === frame.routing.id);
    const holes = new Set(written?.holes.map(({ id }) => id) ?? []);
    const plan = { ...frame.plan, site };
    return pulled(at, guidesFor({ ...frame, plan, holes, names, at, reach, boxOf }, wishes), reach);
  };
}
