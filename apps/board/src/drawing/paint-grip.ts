import type { Grip } from '../tools/grip.ts';
import { INKS } from './inks.ts';
import { type Canvas, ink, type Pen, wash } from './pen.ts';

const PEN: Pen = { colour: INKS.ink, weight: 1.4 };

/** Paints a grip about the middle of the canvas, in pixels; what points out points up. */
export function paintGrip(canvas: Canvas, kind: Grip['kind']): void {
  switch (kind) {
    case 'leg':
    case 'walk leg':
      disc(canvas, 7, 1);
      ink(canvas, kind === 'walk leg' ? { ...PEN, dash: [2, 2] } : PEN, 1);
      lines(canvas, [-3, 0, 3, 0], [0, -3, 0, 3]);
      break;
    case 'waypoint':
      square(canvas, INKS.sheet, PEN);
      break;
    case 'beyond':
      disc(canvas, 11, 0.85);
      // Away from the hole, and back towards it.
      lines(canvas, [0, 8, 0, -7], [-4, -3, 0, -8, 4, -3], [-4, 4, 0, 9, 4, 4]);
      break;
    case 'green bearing':
      disc(canvas, 10, 0.9);
      ink(canvas, { ...PEN, weight: 1 }, 1);
      turn(canvas);
      break;
    default:
      square(canvas, INKS.play, { colour: INKS.sheet, weight: 1.4 });
  }
}

function disc(canvas: Canvas, radius: number, opacity: number): void {
  canvas.beginPath();
  canvas.arc(0, 0, radius, 0, 2 * Math.PI);
  canvas.globalAlpha = opacity;
  wash(canvas, INKS.sheet);
  canvas.globalAlpha = 1;
}

function square(canvas: Canvas, colour: string, pen: Pen): void {
  canvas.beginPath();
  canvas.rect(-5, -5, 10, 10);
  wash(canvas, colour);
  ink(canvas, pen, 1);
}

function lines(canvas: Canvas, ...paths: readonly (readonly number[])[]): void {
  canvas.beginPath();
  for (const path of paths) {
    for (let at = 0; at + 1 < path.length; at += 2) {
      const [x, y] = [path[at] ?? 0, path[at + 1] ?? 0];
      if (at === 0) canvas.moveTo(x, y);
      else canvas.lineTo(x, y);
    }
  }
  ink(canvas, PEN, 1);
}

/** Most of a circle, and the head of an arrow where it ends. */
function turn(canvas: Canvas): void {
  canvas.beginPath();
  canvas.arc(0, 0, 5, (163 * Math.PI) / 180, (49 * Math.PI) / 180);
  canvas.moveTo(6, 1);
  canvas.lineTo(3.5, 4.4);
  canvas.lineTo(0, 2.2);
  ink(canvas, PEN, 1);
}
