import { memo } from 'react';
import { INKS } from './inks.ts';
import { Line, Path } from './konva-shapes.ts';
import { toSheet } from './site-transform.ts';
import type { WalkView } from './walk-view.ts';

interface WalkShapeProps {
  readonly view: WalkView;
  readonly scale: number;
  readonly selected: boolean;
}

/** The walk to the next tee: dotted, with an arrow where it ends. */
export const WalkShape = memo(function WalkShape({ view, scale, selected }: WalkShapeProps) {
  const [x, y] = toSheet(view.end);
  const pen = { stroke: INKS.ink, strokeScaleEnabled: false, perfectDrawEnabled: false };
  return (
    <>
      <Line points={[...view.line]} {...pen} strokeWidth={selected ? 2.6 : 1.4} dash={[2, 3.5]} lineJoin="round" />
      {view.turn !== undefined && (
        <Path
          data="M-3 6 L0 0 L3 6"
          x={x}
          y={y}
          rotation={view.turn}
          scaleX={1 / scale}
          scaleY={1 / scale}
          {...pen}
          strokeWidth={1.3}
        />
      )}
    </>
  );
});
