import { memo } from 'react';
import type { HoleView } from './hole-view.ts';
import { INKS } from './inks.ts';
import { Group, Line } from './konva-shapes.ts';

/** Where a hole was before it was taken hold of: outlines only. */
export const GhostShape = memo(function GhostShape({ view }: { readonly view: HoleView }) {
  const pen = { stroke: INKS.ink, strokeWidth: 1.5, strokeScaleEnabled: false, perfectDrawEnabled: false };
  return (
    <Group opacity={0.7}>
      <Line points={[...view.line]} {...pen} dash={[4, 4]} />
      {view.green && <Line points={[...view.green.outline]} closed {...pen} dash={[3, 3]} />}
    </Group>
  );
});
