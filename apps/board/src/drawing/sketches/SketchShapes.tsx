import type { SketchId } from '@loopwright/model';
import { memo } from 'react';
import { Painted } from '../Painted.tsx';
import { paintSketch, type SketchState } from './paint-sketch.ts';
import type { SketchView } from './sketch-view.ts';

interface SketchShapesProps {
  readonly sketches: readonly SketchView[];
  readonly scale: number;
  /** The sketch that is picked out. */
  readonly selected: SketchId | undefined;
}

/** What was sketched beside the plan, over the holes' ground and under their lines. */
export const SketchShapes = memo(function SketchShapes({ sketches, scale, selected }: SketchShapesProps) {
  return sketches.map((view) => (
    <SketchShape key={view.id} view={view} scale={scale} state={view.id === selected ? 'selected' : 'plain'} />
  ));
});

interface SketchShapeProps {
  readonly view: SketchView;
  readonly scale: number;
  readonly state: SketchState;
}

const SketchShape = memo(function SketchShape({ view, scale, state }: SketchShapeProps) {
  return <Painted paint={(canvas) => paintSketch(canvas, view, scale, state)} />;
});
