import type { TeeSetId } from '@loopwright/model';
import type { HoleState } from './hole-state.ts';
import type { HoleView, TeeView } from './hole-view.ts';
import { INKS } from './inks.ts';
import { type Canvas, ink, type Pen, trace, wash } from './pen.ts';
import { toSheet } from './site-transform.ts';

/** Metres of a tee on the ground; drawn no smaller than its pixels. */
const TEE = { long: 13, short: 7, metres: 12 };
/** Half a turn point's cross, in pixels. */
const CROSS = 5.5;
/** A green is drawn at its real size, but stays a green when seen from far away. */
const LEAST_GREEN_PIXELS = 4.5;

/** Paper under the line of play. */
const CASING: Pen = { colour: INKS.casing, weight: 4.6 };

/** Paints a hole without its number: centreline, green, turn points and tees, in sheet units. */
export function paintHole(canvas: Canvas, view: HoleView, scale: number, teeSet: TeeSetId, state: HoleState): void {
  const colour = view.spare ? INKS.softInk : INKS.ink;
  canvas.lineJoin = 'round';
  trace(canvas, view.line);
  ink(canvas, CASING, scale);
  ink(canvas, { colour, weight: state === 'plain' ? 1.5 : 2.4, ...(view.spare ? { dash: [7, 5] } : {}) }, scale);
  canvas.lineJoin = 'miter';
  if (view.green) paintGreen(canvas, view.green, scale);
  for (const { at } of view.turns) {
    const [[x, y], arm] = [toSheet(at), CROSS / scale];
    canvas.beginPath();
    canvas.moveTo(x - arm, y);
    canvas.lineTo(x + arm, y);
    canvas.moveTo(x, y - arm);
    canvas.lineTo(x, y + arm);
    ink(canvas, CASING, scale);
    ink(canvas, { colour, weight: 1.6 }, scale);
  }
  for (const tee of view.tees) paintTee(canvas, tee, scale, tee.teeSet === teeSet ? 'in use' : 'another set');
}

function paintGreen(canvas: Canvas, { at, reach, outline }: NonNullable<HoleView['green']>, scale: number): void {
  const [x, y] = toSheet(at);
  if (reach * scale < LEAST_GREEN_PIXELS) {
    canvas.beginPath();
    canvas.arc(x, y, LEAST_GREEN_PIXELS / scale, 0, 2 * Math.PI);
  } else {
    trace(canvas, outline);
    canvas.closePath();
  }
  ink(canvas, CASING, scale);
  wash(canvas, INKS.playFill);
  ink(canvas, { colour: INKS.play, weight: 1.4 }, scale);
}

function paintTee(canvas: Canvas, tee: TeeView, scale: number, use: 'in use' | 'another set'): void {
  const inUse = use === 'in use';
  const [x, y] = toSheet(tee.at);
  const size = Math.max(1 / scale, TEE.metres / TEE.long / 2.5) * (inUse ? 1 : 0.62);
  const [long, short] = [TEE.long * size, TEE.short * size];
  canvas.save();
  canvas.translate(x, y);
  canvas.rotate((tee.turn * Math.PI) / 180);
  canvas.globalAlpha *= inUse ? 1 : 0.7;
  canvas.beginPath();
  canvas.rect(-short / 2, -long / 2, short, long);
  wash(canvas, inUse ? INKS.sheet : INKS.paper);
  const dash = tee.proposed && inUse ? { dash: [2, 2] } : {};
  ink(canvas, { colour: inUse ? INKS.ink : INKS.softInk, weight: inUse ? 1.5 : 1.1, ...dash }, scale);
  canvas.restore();
}
