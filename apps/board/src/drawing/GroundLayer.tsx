import type { Plan, SketchId } from '@loopwright/model';
import { memo, useMemo } from 'react';
import { DayStartShape } from '../day-start/DayStartShape.tsx';
import type { DayPicture } from '../day-start/day-picture.ts';
import { FeatureShape } from './FeatureShape.tsx';
import type { FeatureView } from './feature-view.ts';
import { Group, Layer } from './konva-shapes.ts';
import type { NameLabel } from './labels.ts';
import { makePatterns } from './patterns.ts';
import { BaseShape, BoundaryShape, MarkShape, NameShape } from './SiteShapes.tsx';
import type { View } from './site-transform.ts';
import { SketchShapes } from './sketches/SketchShapes.tsx';
import type { SketchView } from './sketches/sketch-view.ts';

interface GroundLayerProps {
  readonly site: Plan['site'];
  readonly features: readonly FeatureView[];
  readonly names: readonly NameLabel[];
  /** Those at rest. */
  readonly sketches: readonly SketchView[];
  readonly selectedSketch: SketchId | undefined;
  readonly dayStart: DayPicture | undefined;
  readonly view: View;
}

/** What is there before any hole: features, boundary, bases, marks and their names. Still while holes move. */
export const GroundLayer = memo(function GroundLayer(props: GroundLayerProps) {
  const { site, features, names, view } = props;
  const tiles = useMemo(() => makePatterns(document), []);
  const { scale } = view;
  return (
    <Layer listening={false} x={view.x} y={view.y} scaleX={scale} scaleY={scale}>
      {features.map((feature) => (
        <FeatureShape key={feature.id} view={feature} scale={scale} tile={tiles.get(feature.manner)} />
      ))}
      {site.boundary && <BoundaryShape boundary={site.boundary} />}
      {site.marks.map((mark) => (
        <MarkShape key={mark.id} mark={mark} scale={scale} />
      ))}
      {site.bases.map((base) => (
        <BaseShape key={base.id} base={base} scale={scale} />
      ))}
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
