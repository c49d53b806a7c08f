import type { SketchId } from '@loopwright/model';
import { memo } from 'react';
import { DayStartShape } from '../day-start/DayStartShape.tsx';
import type { DayPicture } from '../day-start/day-picture.ts';
import { Group, Layer } from './konva-shapes.ts';
import type { NameLabel } from './labels.ts';
import { LandShapes } from './land/LandShapes.tsx';
import type { LandShown } from './land/use-land.ts';
import { NameShape } from './SiteShapes.tsx';
import type { View } from './site-transform.ts';
import { SketchShapes } from './sketches/SketchShapes.tsx';
import type { SketchView } from './sketches/sketch-view.ts';

interface GroundLayerProps {
  /** Those at rest. */
  readonly land: LandShown;
  readonly names: readonly NameLabel[];
  /** Those at rest. */
  readonly sketches: readonly SketchView[];
  readonly selectedSketch: SketchId | undefined;
  readonly dayStart: DayPicture | undefined;
  readonly view: View;
}

/** What is there before any hole: features, boundary, bases, marks and their names. Still while holes move. */
export const GroundLayer = memo(function GroundLayer(props: GroundLayerProps) {
  const { land, names, view } = props;
  const { scale } = view;
  return (
    <Layer listening={false} x={view.x} y={view.y} scaleX={scale} scaleY={scale}>
      <LandShapes land={land} scale={scale} />
      {props.dayStart && <DayStartShape picture={props.dayStart} scale={scale} />}
      <SketchShapes sketches={props.sketches} scale={scale} selected={props.selectedSketch} />
      <Group>
        {names.map((name) => (
          <NameShape key={name.id} name={name} scale={scale} />
        ))}
      </Group>
    </Layer>
  );
});
