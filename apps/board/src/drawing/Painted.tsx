import type { Context } from 'konva/lib/Context.js';
import { Shape } from './konva-shapes.ts';
import type { Canvas } from './pen.ts';

interface PaintedProps {
  /** Leaves the canvas as it likes: it is put back. */
  readonly paint: (canvas: Canvas) => void;
}

/** A shape of one's own. Many small things painted as one cost far less than a shape for each of them. */
export function Painted({ paint }: PaintedProps) {
  const scene = ({ _context: canvas }: Context) => {
    canvas.save();
    paint(canvas);
    canvas.restore();
  };
  return <Shape sceneFunc={scene} perfectDrawEnabled={false} />;
}
