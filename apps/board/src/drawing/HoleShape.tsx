import type { TeeSetId } from '@loopwright/model';
import { memo } from 'react';
import type { HoleState } from './hole-state.ts';
import type { HoleView } from './hole-view.ts';
import { Painted } from './Painted.tsx';
import { paintHole } from './paint-hole.ts';

interface HoleShapeProps {
  readonly view: HoleView;
  readonly scale: number;
  readonly teeSet: TeeSetId;
  readonly state: HoleState;
}

/**
 * A hole: centreline, turn points, tees and green, painted as one shape. With a shape for each of them the
 * library took longer to keep eleven moving holes in order than to paint them.
 */
export const HoleShape = memo(function HoleShape({ view, scale, teeSet, state }: HoleShapeProps) {
  return <Painted paint={(canvas) => paintHole(canvas, view, scale, teeSet, state)} />;
});
