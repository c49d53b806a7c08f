import type { Severity } from '@loopwright/analysis';
import type { SitePoint } from '@loopwright/model';
import { discRadius } from './disc-radius.ts';
import type { FindingView } from './finding-view.ts';
import { INKS, severityInk } from './inks.ts';
import { type Canvas, ink, trace, wash } from './pen.ts';
import { toSheet } from './site-transform.ts';

/** Corners of the signs, in pixels. Shape says the same as colour: diamond, triangle, dot. */
const CORNERS: Readonly<Record<Exclude<Severity, 'mention'>, readonly number[]>> = {
  stop: [0, -8, 8, 0, 0, 8, -8, 0],
  look: [0, -7, 7, 5.5, -7, 5.5],
};
const DOT = 4.2;
/** Round the sign of the one picked out. */
const RING = 13;

/** Paints a finding; the stretch it is about shows for the serious ones and the one picked out. */
export function paintFinding(
  canvas: Canvas,
  view: FindingView,
  at: SitePoint,
  scale: number,
  state: 'plain' | 'selected',
): void {
  const colour = severityInk(view.severity);
  const isSelected = state === 'selected';
  if (view.line && (isSelected || view.severity !== 'mention')) {
    canvas.globalAlpha = isSelected ? 1 : 0.75;
    trace(canvas, view.line);
    ink(canvas, { colour, weight: isSelected ? 3 : 1.6, dash: [5, 3] }, scale);
    canvas.globalAlpha = 1;
  }
  const [x, y] = toSheet(at);
  if (traceLeader(canvas, toSheet(view.at), [x, y], scale)) ink(canvas, { colour, weight: 1 }, scale);
  if (isSelected) {
    circle(canvas, x, y, RING / scale);
    ink(canvas, { colour, weight: 2 }, scale);
  }
  if (view.severity === 'mention') circle(canvas, x, y, DOT / scale);
  else traceSign(canvas, CORNERS[view.severity], x, y, scale);
  canvas.lineJoin = 'round';
  wash(canvas, colour);
  ink(canvas, { colour: INKS.sheet, weight: 1.5 }, scale);
}

/**
 * The line from what a sign is about to the sign, where it had to stand aside. A sign stands aside of a number, a tee or
 * a green: the line ends at its edge, not across it.
 */
function traceLeader(canvas: Canvas, from: readonly [number, number], to: readonly [number, number], scale: number) {
  const [east, south] = [to[0] - from[0], to[1] - from[1]];
  const length = Math.sqrt(east * east + south * south);
  const edge = discRadius(scale) / scale;
  if (length <= edge) return false;
  trace(canvas, [from[0] + (east / length) * edge, from[1] + (south / length) * edge, ...to]);
  return true;
}

function circle(canvas: Canvas, x: number, y: number, radius: number): void {
  canvas.beginPath();
  canvas.arc(x, y, radius, 0, 2 * Math.PI);
}

function traceSign(canvas: Canvas, corners: readonly number[], x: number, y: number, scale: number): void {
  trace(
    canvas,
    corners.map((part, index) => part / scale + (index % 2 === 0 ? x : y)),
  );
  canvas.closePath();
}
