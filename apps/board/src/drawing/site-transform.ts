import type { Box } from '@loopwright/geometry';
import type { CanvasPoint, SitePoint } from '@loopwright/model';

/**
 * The only place where the site plane (metres, y north) is turned into the canvas (pixels, y down).
 *
 * The layers hold shapes in sheet units: metres with y turned over. A layer's scale and position make pixels of them.
 */

/** How the drawing is looked at: pixels per metre, and where the site's origin falls on the canvas. */
export interface View {
  readonly scale: number;
  readonly x: number;
  readonly y: number;
}

export interface CanvasSize {
  readonly width: number;
  readonly height: number;
}

/** Pixels per metre: from a whole county to the pattern of a single tee. */
export const LEAST_SCALE = 0.01;
export const MOST_SCALE = 40;

/** Site point to sheet units, as a pair. */
export function toSheet(at: SitePoint): readonly [number, number] {
  return [at.x, -at.y];
}

/** A line of site points as Konva reads it: x, y, x, y … in sheet units. */
export function toSheetLine(points: readonly SitePoint[]): number[] {
  return points.flatMap((at) => [at.x, -at.y]);
}

export function toCanvas(view: View, at: SitePoint): CanvasPoint {
  return { x: view.x + at.x * view.scale, y: view.y - at.y * view.scale };
}

export function toSite(view: View, at: CanvasPoint): SitePoint {
  return { x: (at.x - view.x) / view.scale, y: (view.y - at.y) / view.scale };
}

/** Degrees a shape is turned on the canvas (clockwise) for a bearing in radians clockwise from north. */
export function turnDegrees(bearing: number): number {
  return (bearing * 180) / Math.PI;
}

/** The same look from a little further along: pixels, as the pointer moves them. */
export function panned(view: View, by: CanvasPoint): View {
  return { scale: view.scale, x: view.x + by.x, y: view.y + by.y };
}

/** Nearer or farther, with the ground under `about` staying where it is. */
export function zoomed(view: View, factor: number, about: CanvasPoint): View {
  const scale = Math.min(MOST_SCALE, Math.max(LEAST_SCALE, view.scale * factor));
  const share = scale / view.scale;
  return { scale, x: about.x - (about.x - view.x) * share, y: about.y - (about.y - view.y) * share };
}

/** The look that shows all of `bounds`, with `margin` pixels of paper around. */
export function fitted(bounds: Box, size: CanvasSize, margin: number): View {
  const width = Math.max(1, bounds.maxX - bounds.minX);
  const height = Math.max(1, bounds.maxY - bounds.minY);
  const room = { width: Math.max(1, size.width - 2 * margin), height: Math.max(1, size.height - 2 * margin) };
  const scale = Math.min(MOST_SCALE, Math.max(LEAST_SCALE, Math.min(room.width / width, room.height / height)));
  const middle = { x: (bounds.minX + bounds.maxX) / 2, y: (bounds.minY + bounds.maxY) / 2 };
  return { scale, x: size.width / 2 - middle.x * scale, y: size.height / 2 + middle.y * scale };
}

/** Paper between the edge and what was brought into view, as a share of the drawing. */
const EDGE = 0.1;

/** The same scale, moved just as far as it takes to have `at` well inside; not at all when it is. */
export function broughtIntoView(view: View, at: SitePoint, size: CanvasSize): View {
  const shown = toCanvas(view, at);
  const inside = (value: number, room: number) => Math.min(room * (1 - EDGE), Math.max(room * EDGE, value));
  const by = { x: inside(shown.x, size.width) - shown.x, y: inside(shown.y, size.height) - shown.y };
  return by.x === 0 && by.y === 0 ? view : panned(view, by);
}
