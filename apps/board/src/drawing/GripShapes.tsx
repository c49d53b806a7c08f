import { bearingOf } from '@loopwright/geometry';
import { memo } from 'react';
import type { Grip } from '../tools/grip.ts';
import type { HoleView } from './hole-view.ts';
import { INKS } from './inks.ts';
import { Painted } from './Painted.tsx';
import { paintGrip } from './paint-grip.ts';
import { ink } from './pen.ts';
import { toSheet } from './site-transform.ts';

interface PartRingsProps {
  readonly hole: HoleView;
  readonly scale: number;
}

/** Rings about the parts that can be taken hold of; a pinned part has a solid one. */
export const PartRings = memo(function PartRings({ hole, scale }: PartRingsProps) {
  const rings = [...hole.tees, ...hole.turns].map(({ part, at }) => ({ part, at, radius: 12 / scale }));
  if (hole.green) rings.push({ part: 'green', at: hole.green.at, radius: hole.green.reach + 6 / scale });
  return (
    <Painted
      paint={(canvas) => {
        for (const { part, at, radius } of rings) {
          canvas.beginPath();
          canvas.arc(...toSheet(at), radius, 0, 2 * Math.PI);
          const pen = hole.pinned.includes(part) ? { weight: 2.4 } : { weight: 1.2, dash: [3, 3] };
          ink(canvas, { colour: INKS.ink, ...pen }, scale);
        }
      }}
    />
  );
});

interface GripShapesProps {
  readonly grips: readonly Grip[];
  readonly scale: number;
}

/** What else can be taken hold of: each kind has a shape of its own, the same wherever it lies. */
export function GripShapes({ grips, scale }: GripShapesProps) {
  if (grips.length === 0) return null;
  return (
    <Painted
      paint={(canvas) => {
        for (const grip of grips) {
          canvas.save();
          canvas.translate(...toSheet(grip.at));
          canvas.scale(1 / scale, 1 / scale);
          if ('out' in grip) canvas.rotate(bearingOf(grip.out));
          paintGrip(canvas, grip.kind);
          canvas.restore();
        }
      }}
    />
  );
}
