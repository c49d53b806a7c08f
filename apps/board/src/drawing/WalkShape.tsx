import { memo } from 'react';
import { INKS } from './inks.ts';
import { Painted } from './Painted.tsx';
import { type Canvas, ink, trace } from './pen.ts';
import { toSheet } from './site-transform.ts';
import type { WalkView } from './walk-view.ts';

interface WalkShapeProps {
  readonly view: WalkView;
  readonly scale: number;
  readonly selected: boolean;
}

/** The walk to the next tee: dotted, with an arrow where it ends. */
export const WalkShape = memo(function WalkShape({ view, scale, selected }: WalkShapeProps) {
  return (
    <Painted
      paint={(canvas) => {
        canvas.lineJoin = 'round';
        trace(canvas, view.line);
        ink(canvas, { colour: INKS.casing, weight: 3.6 }, scale);
        ink(canvas, { colour: INKS.ink, weight: selected ? 2.6 : 1.4, dash: [2, 3.5] }, scale);
        if (view.turn !== undefined) paintArrow(canvas, view, view.turn, scale);
      }}
    />
  );
});

function paintArrow(canvas: Canvas, { end }: WalkView, turn: number, scale: number): void {
  canvas.translate(...toSheet(end));
  canvas.rotate((turn * Math.PI) / 180);
  const size = 1 / scale;
  trace(canvas, [-3 * size, 6 * size, 0, 0, 3 * size, 6 * size]);
  ink(canvas, { colour: INKS.ink, weight: 1.3 }, scale);
}
