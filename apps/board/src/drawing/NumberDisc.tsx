import type { SitePoint } from '@loopwright/model';
import { memo } from 'react';
import type { HoleState } from './hole-state.ts';
import { INKS, SANS } from './inks.ts';
import { Circle, Group, Text } from './konva-shapes.ts';
import { toSheet } from './site-transform.ts';

/** Pixels. */
export const DISC_RADIUS = 11.5;

interface NumberDiscProps {
  readonly label: string;
  readonly at: SitePoint;
  readonly scale: number;
  readonly state: HoleState;
  readonly spare: boolean;
}

/** The number of a hole, of one size however near one looks. */
export const NumberDisc = memo(function NumberDisc({ label, at, scale, state, spare }: NumberDiscProps) {
  const [x, y] = toSheet(at);
  const chosen = state === 'selected';
  return (
    <Group x={x} y={y} scaleX={1 / scale} scaleY={1 / scale}>
      <Circle
        radius={DISC_RADIUS}
        fill={chosen ? INKS.ink : INKS.sheet}
        stroke={spare ? INKS.softInk : INKS.ink}
        strokeWidth={state === 'hovered' ? 2.4 : 1.5}
        perfectDrawEnabled={false}
        {...(spare ? { dash: [3, 2.5] } : {})}
      />
      <Text
        text={label}
        x={-DISC_RADIUS * 1.5}
        y={-DISC_RADIUS}
        width={DISC_RADIUS * 3}
        height={DISC_RADIUS * 2 + 1}
        align="center"
        verticalAlign="middle"
        fontFamily={SANS}
        fontStyle="600"
        fontSize={label.length > 2 ? 10 : 12.5}
        fill={chosen ? INKS.sheet : INKS.ink}
        perfectDrawEnabled={false}
      />
    </Group>
  );
});
