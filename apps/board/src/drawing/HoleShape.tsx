import type { SitePoint, TeeSetId } from '@loopwright/model';
import { memo } from 'react';
import type { HoleState } from './hole-state.ts';
import type { HoleView, TeeView } from './hole-view.ts';
import { INKS } from './inks.ts';
import { Circle, Line, Path, Rect } from './konva-shapes.ts';
import { NumberDisc } from './NumberDisc.tsx';
import { toSheet } from './site-transform.ts';

interface HoleShapeProps {
  readonly view: HoleView;
  readonly scale: number;
  readonly teeSet: TeeSetId;
  readonly state: HoleState;
  /** Where its number stands, clear of other numbers. */
  readonly numberAt: SitePoint | undefined;
}

/** Metres of a tee on the ground; drawn no smaller than its pixels. */
const TEE = { long: 13, short: 7, metres: 12 };
const CROSS = 'M-5.5 0 H5.5 M0 -5.5 V5.5';
/** A green is drawn at its real size, but stays a green when seen from far away. */
const LEAST_GREEN_PIXELS = 4.5;

/** A hole: centreline, turn points, tees, green and number. */
export const HoleShape = memo(function HoleShape({ view, scale, teeSet, state, numberAt }: HoleShapeProps) {
  const still = 1 / scale;
  const line = { stroke: view.spare ? INKS.softInk : INKS.ink, strokeScaleEnabled: false, perfectDrawEnabled: false };
  return (
    <>
      <Line
        points={[...view.line]}
        {...line}
        strokeWidth={state === 'plain' ? 1.5 : 2.4}
        lineJoin="round"
        {...(view.spare ? { dash: [7, 5] } : {})}
      />
      {view.green && <GreenShape green={view.green} scale={scale} />}
      {view.turns.map((turn) => {
        const [x, y] = toSheet(turn.at);
        return (
          <Path key={turn.part} data={CROSS} x={x} y={y} scaleX={still} scaleY={still} {...line} strokeWidth={1.6} />
        );
      })}
      {view.tees.map((tee) => (
        <TeeShape key={tee.part} tee={tee} scale={scale} inUse={tee.teeSet === teeSet} />
      ))}
      {numberAt && <NumberDisc label={view.label} at={numberAt} scale={scale} state={state} spare={view.spare} />}
    </>
  );
});

function GreenShape({ green, scale }: { readonly green: NonNullable<HoleView['green']>; readonly scale: number }) {
  const [x, y] = toSheet(green.at);
  const pen = { fill: INKS.playFill, stroke: INKS.play, strokeWidth: 1.4, strokeScaleEnabled: false };
  if (green.reach * scale < LEAST_GREEN_PIXELS) {
    return <Circle x={x} y={y} radius={LEAST_GREEN_PIXELS / scale} {...pen} perfectDrawEnabled={false} />;
  }
  return <Line points={[...green.outline]} closed {...pen} perfectDrawEnabled={false} />;
}

interface TeeShapeProps {
  readonly tee: TeeView;
  readonly scale: number;
  readonly inUse: boolean;
}

function TeeShape({ tee, scale, inUse }: TeeShapeProps) {
  const [x, y] = toSheet(tee.at);
  const size = Math.max(1 / scale, TEE.metres / TEE.long / 2.5) * (inUse ? 1 : 0.62);
  return (
    <Rect
      x={x}
      y={y}
      rotation={tee.turn}
      scaleX={size}
      scaleY={size}
      offsetX={TEE.short / 2}
      offsetY={TEE.long / 2}
      width={TEE.short}
      height={TEE.long}
      fill={inUse ? INKS.sheet : INKS.paper}
      stroke={inUse ? INKS.ink : INKS.softInk}
      strokeWidth={inUse ? 1.5 : 1.1}
      strokeScaleEnabled={false}
      perfectDrawEnabled={false}
      {...(tee.proposed && inUse ? { dash: [2, 2] } : {})}
      opacity={inUse ? 1 : 0.7}
    />
  );
}
