import type { SitePoint } from '@loopwright/model';
import { memo } from 'react';
import { discRadius } from './disc-radius.ts';
import type { HoleState } from './hole-state.ts';
import { INKS, SANS } from './inks.ts';
import { Circle, Group, Text } from './konva-shapes.ts';
import { toSheet } from './site-transform.ts';

interface NumberDiscProps {
  readonly label: string;
  readonly at: SitePoint;
  readonly scale: number;
  readonly state: HoleState;
  readonly spare: boolean;
}

/** The number of a hole, legible however far one looks from. */
export const NumberDisc = memo(function NumberDisc({ label, at, scale, state, spare }: NumberDiscProps) {
  const [x, y] = toSheet(at);
  const radius = discRadius(scale);
  const chosen = state === 'selected';
  return (
    <Group x={x} y={y} scaleX={1 / scale} scaleY={1 / scale}>
      <Circle
        radius={radius}
        fill={chosen ? INKS.ink : INKS.sheet}
        stroke={spare ? INKS.softInk : INKS.ink}
        strokeWidth={state === 'hovered' ? 2.4 : 1.5}
        perfectDrawEnabled={false}
        {...(spare ? { dash: [3, 2.5] } : {})}
      />
      <Text
        text={label}
        x={-radius * 1.5}
        y={-radius}
        width={radius * 3}
        height={radius * 2 + 1}
        align="center"
        verticalAlign="middle"
        fontFamily={SANS}
        fontStyle="600"
        fontSize={radius * (label.length > 2 ? 0.87 : 1.09)}
        fill={chosen ? INKS.sheet : INKS.ink}
        perfectDrawEnabled={false}
      />
    </Group>
  );
});
