import { bearingOf } from '@loopwright/geometry';
import { memo } from 'react';
import type { Grip } from '../tools/grip.ts';
import type { HoleView } from './hole-view.ts';
import { INKS } from './inks.ts';
import { Circle, Group, Path, Rect } from './konva-shapes.ts';
import { toSheet, turnDegrees } from './site-transform.ts';

interface PartRingsProps {
  readonly hole: HoleView;
  readonly scale: number;
}

/** Rings about the parts that can be taken hold of; a pinned part has a solid one. */
export const PartRings = memo(function PartRings({ hole, scale }: PartRingsProps) {
  const rings = [...hole.tees, ...hole.turns].map(({ part, at }) => ({ part, at, radius: 12 / scale }));
  if (hole.green) rings.push({ part: 'green', at: hole.green.at, radius: hole.green.reach + 6 / scale });
  return rings.map(({ part, at, radius }) => {
    const [x, y] = toSheet(at);
    const pinned = hole.pinned.includes(part);
    return (
      <Circle
        key={part}
        x={x}
        y={y}
        radius={radius}
        stroke={INKS.ink}
        strokeWidth={pinned ? 2.4 : 1.2}
        {...(pinned ? {} : { dash: [3, 3] })}
        strokeScaleEnabled={false}
        perfectDrawEnabled={false}
      />
    );
  });
});

interface GripShapesProps {
  readonly grips: readonly Grip[];
  readonly scale: number;
}

/** What else can be taken hold of: each kind has a shape of its own, the same wherever it lies. */
export function GripShapes({ grips, scale }: GripShapesProps) {
  return grips.map((grip) => {
    const [x, y] = toSheet(grip.at);
    return (
      <Group
        key={`${grip.kind} ${keyOf(grip)}`}
        x={x}
        y={y}
        scaleX={1 / scale}
        scaleY={1 / scale}
        rotation={'out' in grip ? turnDegrees(bearingOf(grip.out)) : 0}
      >
        <GripSign grip={grip} />
      </Group>
    );
  });
}

function keyOf(grip: Grip): string {
  if (grip.kind === 'leg') return String(grip.place);
  if (grip.kind === 'beyond') return grip.end;
  return 'index' in grip ? String(grip.index) : '';
}

const PEN = { stroke: INKS.ink, strokeWidth: 1.4, perfectDrawEnabled: false } as const;
const PLUS = 'M-3 0 H3 M0 -3 V3';
/** Away from the hole, and back towards it. */
const ALONG = 'M0 8 V-7 M-4 -3 L0 -8 L4 -3 M-4 4 L0 9 L4 4';
const TURN = 'M-5 1.5 A5 5 0 1 1 3.5 4 M6 1 L3.5 4.4 L0 2.2';

function GripSign({ grip }: { readonly grip: Grip }) {
  switch (grip.kind) {
    case 'leg':
    case 'walk leg':
      return (
        <>
          <Circle radius={7} fill={INKS.sheet} {...PEN} {...(grip.kind === 'walk leg' ? { dash: [2, 2] } : {})} />
          <Path data={PLUS} {...PEN} />
        </>
      );
    case 'waypoint':
      return <Rect x={-5} y={-5} width={10} height={10} rotation={0} fill={INKS.sheet} {...PEN} />;
    case 'beyond':
      return (
        <>
          <Circle radius={11} fill={INKS.sheet} opacity={0.85} />
          <Path data={ALONG} {...PEN} />
        </>
      );
    case 'green bearing':
      return (
        <>
          <Circle radius={10} fill={INKS.sheet} opacity={0.9} {...PEN} strokeWidth={1} />
          <Path data={TURN} {...PEN} />
        </>
      );
    default:
      return <Rect x={-5} y={-5} width={10} height={10} fill={INKS.play} stroke={INKS.sheet} strokeWidth={1.4} />;
  }
}
