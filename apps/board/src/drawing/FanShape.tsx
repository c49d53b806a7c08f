import type { ShotFan } from '@loopwright/analysis';
import { memo } from 'react';
import { fanOutline } from './fan-outline.ts';
import { severityInk } from './inks.ts';
import { Line } from './konva-shapes.ts';

/** Ground a ball from one place may reach. Shown for the hole picked out; its caution stands in the drawer. */
export const FanShape = memo(function FanShape({ fan }: { readonly fan: ShotFan }) {
  const ink = severityInk(fan.severity);
  return (
    <Line
      points={fanOutline(fan)}
      closed
      stroke={ink}
      strokeWidth={1}
      dash={fan.severity === 'stop' ? [6, 3] : [2, 3]}
      fill={`${ink}0F`}
      strokeScaleEnabled={false}
      perfectDrawEnabled={false}
    />
  );
});
