import type { Context } from 'konva/lib/Context.js';
import { memo } from 'react';
import { INKS, SERIF } from '../drawing/inks.ts';
import { Shape } from '../drawing/konva-shapes.ts';
import { type Canvas, ink, trace } from '../drawing/pen.ts';
import { toSheet } from '../drawing/site-transform.ts';
import type { DayPicture } from './day-picture.ts';

interface DayStartShapeProps {
  readonly picture: DayPicture;
  readonly scale: number;
}

/** Dots, unlike the dashes of a drag's ghost. */
const PEN = { colour: INKS.mention, weight: 2.4, dash: [0.5, 4.8] } as const;
/** Half the cross of a thing without extent, and the arm of a tee, in pixels. */
const ARM = 6;

/** Where things lay as the day began: dotted lines, with the numbers the holes had then. */
export const DayStartShape = memo(function DayStartShape({ picture, scale }: DayStartShapeProps) {
  const paint = ({ _context: canvas }: Context) => {
    canvas.save();
    canvas.lineCap = 'round';
    for (const { line, closed } of picture.things) paintLine(canvas, line, closed ? 'closed' : 'open', scale);
    for (const { line, green, label, centreline } of picture.holes) {
      paintLine(canvas, line, 'open', scale);
      if (green) paintLine(canvas, green.outline, 'closed', scale);
      const at = green?.at ?? centreline[0];
      if (at) paintNumber(canvas, label, toSheet(at), scale);
    }
    canvas.restore();
  };
  return <Shape sceneFunc={paint} perfectDrawEnabled={false} />;
});

function paintLine(canvas: Canvas, line: readonly number[], way: 'closed' | 'open', scale: number): void {
  const [x, y] = [line[0] ?? 0, line[1] ?? 0];
  if (line.length === 2) {
    canvas.beginPath();
    canvas.arc(x, y, ARM / scale, 0, 2 * Math.PI);
  } else {
    trace(canvas, line);
    if (way === 'closed') canvas.closePath();
  }
  ink(canvas, PEN, scale);
}

function paintNumber(canvas: Canvas, label: string, [x, y]: readonly [number, number], scale: number): void {
  canvas.save();
  canvas.translate(x, y);
  canvas.scale(1 / scale, 1 / scale);
  canvas.font = `italic 600 13px ${SERIF}`;
  canvas.textAlign = 'center';
  canvas.textBaseline = 'middle';
  canvas.setLineDash([]);
  canvas.lineWidth = 3;
  canvas.strokeStyle = INKS.sheet;
  canvas.strokeText(label, 0, 0);
  canvas.fillStyle = PEN.colour;
  canvas.fillText(label, 0, 0);
  canvas.restore();
}
