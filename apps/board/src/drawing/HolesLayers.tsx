import type { HoleId, SitePoint, TeeSetId } from '@loopwright/model';
import { memo } from 'react';
import { HoleShape } from './HoleShape.tsx';
import type { HoleState } from './hole-state.ts';
import type { HoleView } from './hole-view.ts';
import { INKS } from './inks.ts';
import { Layer, Line } from './konva-shapes.ts';
import { Painted } from './Painted.tsx';
import { paintNumber } from './paint-number.ts';
import type { Canvas } from './pen.ts';
import type { View } from './site-transform.ts';
import { WalkShape } from './WalkShape.tsx';
import type { WalkView } from './walk-view.ts';

/** What of a hole is drawn, and how it stands out. */
export interface HolesProps {
  readonly holes: readonly HoleView[];
  readonly numbers: ReadonlyMap<HoleId, SitePoint>;
  readonly teeSet: TeeSetId;
  readonly chosenHoles: readonly HoleId[];
  readonly hoveredHole: HoleId | undefined;
  readonly scale: number;
}

interface WalksProps {
  readonly walks: readonly WalkView[];
  readonly selectedWalk: string | undefined;
  readonly scale: number;
}

export const Corridor = memo(function Corridor({ view }: { readonly view: HoleView }) {
  return <Line points={[...view.corridor]} closed fill={INKS.corridor} perfectDrawEnabled={false} />;
});

export const Holes = memo(function Holes({ holes, numbers, teeSet, chosenHoles, hoveredHole, scale }: HolesProps) {
  const stateOf = (hole: HoleId): HoleState =>
    chosenHoles.includes(hole) ? 'selected' : hole === hoveredHole ? 'hovered' : 'plain';
  const paintNumbers = (canvas: Canvas) => {
    for (const hole of holes) {
      const at = numbers.get(hole.id);
      if (at) paintNumber(canvas, hole, at, scale, stateOf(hole.id));
    }
  };
  return (
    <>
      {holes.map((hole) => (
        <HoleShape key={hole.id} view={hole} scale={scale} teeSet={teeSet} state={stateOf(hole.id)} />
      ))}
      {holes.length > 0 && <Painted paint={paintNumbers} />}
    </>
  );
});

export function Walks({ walks, selectedWalk, scale }: WalksProps) {
  return walks.map((walk) => (
    <WalkShape key={walk.key} view={walk} scale={scale} selected={walk.key === selectedWalk} />
  ));
}

interface CorridorLayerProps extends Omit<WalksProps, 'scale'> {
  readonly holes: readonly HoleView[];
  readonly view: View;
}

/** Corridors and walks of the holes nobody is moving, under the holes. Not drawn anew while others are moved. */
export const CorridorLayer = memo(function CorridorLayer({ holes, walks, selectedWalk, view }: CorridorLayerProps) {
  return (
    <Layer listening={false} x={view.x} y={view.y} scaleX={view.scale} scaleY={view.scale}>
      {holes.map((hole) => (
        <Corridor key={hole.id} view={hole} />
      ))}
      <Walks walks={walks} selectedWalk={selectedWalk} scale={view.scale} />
    </Layer>
  );
});

interface HoleLayerProps extends Omit<HolesProps, 'scale'> {
  readonly view: View;
}

/** The holes nobody is moving. Not drawn anew while others are moved. */
export const HoleLayer = memo(function HoleLayer({ view, ...holes }: HoleLayerProps) {
  return (
    <Layer listening={false} x={view.x} y={view.y} scaleX={view.scale} scaleY={view.scale}>
      <Holes {...holes} scale={view.scale} />
    </Layer>
  );
});
