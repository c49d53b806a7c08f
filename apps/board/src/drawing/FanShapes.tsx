import type { ShotFan } from '@loopwright/analysis';
import { memo } from 'react';
import { fanOutline } from './fan-outline.ts';
import { severityInk } from './inks.ts';
import { Painted } from './Painted.tsx';
import { ink, trace, wash } from './pen.ts';

interface FanShapesProps {
  readonly fans: readonly ShotFan[];
  readonly scale: number;
}

/** Ground a ball from one place may reach. Shown for the hole picked out; its caution stands in the drawer. */
export const FanShapes = memo(function FanShapes({ fans, scale }: FanShapesProps) {
  return (
    <Painted
      paint={(canvas) => {
        for (const fan of fans) {
          const colour = severityInk(fan.severity);
          trace(canvas, fanOutline(fan));
          canvas.closePath();
          wash(canvas, `${colour}0F`);
          ink(canvas, { colour, weight: 1, dash: fan.severity === 'stop' ? [6, 3] : [2, 3] }, scale);
        }
      }}
    />
  );
});
