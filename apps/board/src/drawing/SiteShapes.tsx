import type { Base, Boundary, Ring, SiteMark } from '@loopwright/model';
import { memo } from 'react';
import { INKS, SERIF } from './inks.ts';
import { Circle, Group, Line, Path, RegularPolygon, Text } from './konva-shapes.ts';
import type { NameLabel } from './labels.ts';
import { toSheet, toSheetLine } from './site-transform.ts';

/** The edge of the site: dash-dot, as on a survey. Other people's land inside it the same way, thinner. */
export const BoundaryShape = memo(function BoundaryShape({ boundary }: { readonly boundary: Boundary }) {
  return (
    <Group>
      {boundary.outlines.map((ring) => (
        <EdgeLine key={keyOf(ring)} ring={ring} width={1.7} dash={[16, 4, 2, 4]} />
      ))}
      {boundary.inner.map((ring) => (
        <EdgeLine key={keyOf(ring)} ring={ring} width={1.2} dash={[8, 3, 2, 3]} />
      ))}
    </Group>
  );
});

interface EdgeLineProps {
  readonly ring: Ring;
  readonly width: number;
  readonly dash: number[];
}

function EdgeLine({ ring, width, dash }: EdgeLineProps) {
  const pen = { points: toSheetLine(ring), strokeScaleEnabled: false, perfectDrawEnabled: false, closed: true };
  return (
    <>
      <Line {...pen} stroke={INKS.casing} strokeWidth={width + 2.6} lineJoin="round" />
      <Line {...pen} stroke={INKS.ink} strokeWidth={width} dash={dash} />
    </>
  );
}

/** Outlines have no ids; their first corner tells them apart. */
const keyOf = (ring: readonly { readonly x: number; readonly y: number }[]) =>
  `${ring[0]?.x} ${ring[0]?.y} ${ring.length}`;

const HOUSE = 'M0 -11 L11 -3 V9 H-11 V-3 Z';

/** Where golfers gather: a house at the apron, and the footprints to their real size. */
export const BaseShape = memo(function BaseShape({ base, scale }: { readonly base: Base; readonly scale: number }) {
  const [x, y] = toSheet(base.apron);
  const still = { scaleX: 1 / scale, scaleY: 1 / scale };
  return (
    <Group>
      {base.footprints.map((ring) => (
        <Line
          key={keyOf(ring)}
          points={toSheetLine(ring)}
          closed
          fill="rgba(36, 49, 58, 0.12)"
          stroke={INKS.ink}
          strokeWidth={1}
          strokeScaleEnabled={false}
          perfectDrawEnabled={false}
        />
      ))}
      <Path
        data={HOUSE}
        x={x}
        y={y}
        {...still}
        fill={INKS.ink}
        stroke={INKS.sheet}
        strokeWidth={1.5}
        lineJoin="round"
      />
    </Group>
  );
});

/** Something found on the land: filled where it is natural, open where it needs work. */
export const MarkShape = memo(function MarkShape({ mark, scale }: { readonly mark: SiteMark; readonly scale: number }) {
  const [x, y] = toSheet(mark.at);
  const paper = { stroke: INKS.sheet, strokeWidth: 4.5, fill: MARK_PAPER, perfectDrawEnabled: false };
  const pen = { stroke: INKS.play, strokeWidth: 1.7, dash: [4, 2], perfectDrawEnabled: false };
  return (
    <Group x={x} y={y} scaleX={1 / scale} scaleY={1 / scale}>
      {[paper, pen].map((line) => (
        <MarkOutline key={line.strokeWidth} kind={mark.kind} line={line} />
      ))}
      {mark.verdict === 'natural' && <Circle radius={2.4} fill={INKS.play} perfectDrawEnabled={false} />}
    </Group>
  );
});

/** What a mark stands on: enough paper to be found on an aerial, little enough to see the ground. */
const MARK_PAPER = 'rgba(251, 247, 236, 0.72)';

interface MarkOutlineProps {
  readonly kind: SiteMark['kind'];
  readonly line: { readonly stroke: string; readonly strokeWidth: number };
}

/** A round for a green, a square for a tee, a triangle for landing ground. */
function MarkOutline({ kind, line }: MarkOutlineProps) {
  if (kind === 'green site') return <Circle radius={9} {...line} />;
  if (kind === 'tee site') return <RegularPolygon sides={4} radius={11} rotation={45} {...line} />;
  return <RegularPolygon sides={3} radius={11} {...line} />;
}

/** Paper about the letters, so that they can be read on an image and on a hatch. */
const HALO = 'rgba(251, 247, 236, 0.75)';

/** The name of a feature, written where it covers no hole number. */
export const NameShape = memo(function NameShape({
  name,
  scale,
}: {
  readonly name: NameLabel;
  readonly scale: number;
}) {
  const [x, y] = toSheet(name.at);
  const wet = name.manner === 'water' || name.manner === 'wetland';
  const ink = wet ? INKS.waterText : name.manner === 'trees' ? INKS.treesText : INKS.softInk;
  return (
    <Text
      text={name.text}
      x={x}
      y={y}
      scaleX={1 / scale}
      scaleY={1 / scale}
      width={300}
      offsetX={150}
      offsetY={8}
      align="center"
      fontFamily={SERIF}
      fontStyle="italic"
      fontSize={14}
      fill={ink}
      stroke={HALO}
      strokeWidth={3}
      lineJoin="round"
      fillAfterStrokeEnabled
      perfectDrawEnabled={false}
    />
  );
});
