import type { SitePoint } from '@loopwright/model';
import { memo } from 'react';
import { INKS, SANS } from '../drawing/inks.ts';
import { Circle, Group, Line, Path, Text } from '../drawing/konva-shapes.ts';
import { toSheet, toSheetLine } from '../drawing/site-transform.ts';
import { useWatched } from '../live/use-watched.ts';
import type { InstrumentPicture } from './instrument.ts';
import type { Held, InstrumentHand } from './instrument-hand.ts';

interface PictureProps {
  readonly hand: InstrumentHand;
  /** Pixels a metre takes. */
  readonly scale: number;
}

/** What the instrument in the hand draws over the plan, and the cross of the keyboard or above a finger. It alone is drawn anew as it moves. */
export const InstrumentPictureShape = memo(function InstrumentPictureShape({ hand, scale }: PictureProps) {
  const held = useWatched(hand.held);
  const cross = useWatched(hand.cross);
  const finger = useWatched(hand.finger);
  const at = cross ?? finger;
  if (!held) return null;
  return (
    <Group listening={false}>
      <Picture held={held} scale={scale} />
      {at && <CrossShape at={at} scale={scale} />}
    </Group>
  );
});

const PEN = { strokeScaleEnabled: false, perfectDrawEnabled: false } as const;
const MANNERS = {
  new: { stroke: INKS.ink, strokeWidth: 2 },
  guide: { stroke: INKS.play, strokeWidth: 1.2, dash: [6, 4] },
  measure: { stroke: INKS.ink, strokeWidth: 1.4, dash: [2, 3] },
};
/** Paper under every line: what is aimed at lies on an aerial as often as not. */
const CASING = { stroke: INKS.casing, strokeWidth: 4 };
/** Radii of dots, in pixels. */
const DOTS = { new: 5, guide: 3.5, grip: 4.5 } as const;

function Picture({ held, scale }: { readonly held: Held; readonly scale: number }) {
  const { lines = [], rings = [], dots = [], words = [] } = useWatched(held.running.picture);
  return (
    <>
      {lines.map(({ points, manner, closed }, index) => {
        const line = { points: toSheetLine(points), closed: closed === true, ...PEN };
        return (
          // biome-ignore lint/suspicious/noArrayIndexKey: lines have no names, and are made anew at every move
          <Group key={index}>
            <Line {...line} {...CASING} />
            <Line {...line} {...MANNERS[manner]} />
          </Group>
        );
      })}
      {rings.map(({ centre, radius, manner }) => {
        const [x, y] = toSheet(centre);
        const ring = { x, y, radius, ...PEN };
        return (
          <Group key={`${x} ${y} ${radius}`}>
            <Circle {...ring} {...CASING} />
            <Circle {...ring} {...MANNERS[manner]} />
          </Group>
        );
      })}
      {dots.map((dot) => (
        <Dot key={`${dot.manner} ${dot.at.x} ${dot.at.y}`} dot={dot} scale={scale} />
      ))}
      {words.map(({ at, text }) => (
        <Words key={`${at.x} ${at.y}`} at={at} text={text} scale={scale} />
      ))}
    </>
  );
}

type DotOf = NonNullable<InstrumentPicture['dots']>[number];

function Dot({ dot, scale }: { readonly dot: DotOf; readonly scale: number }) {
  const [x, y] = toSheet(dot.at);
  const fill = dot.manner === 'new' ? INKS.ink : INKS.sheet;
  const stroke = dot.manner === 'guide' ? INKS.play : INKS.ink;
  return (
    <Circle x={x} y={y} radius={DOTS[dot.manner] / scale} fill={fill} stroke={stroke} strokeWidth={1.6} {...PEN} />
  );
}

const LETTERS = 13;

/** Words on paper of their own, so that they can be read over an aerial. */
function Words({ at, text, scale }: { readonly at: SitePoint; readonly text: string; readonly scale: number }) {
  const [x, y] = toSheet(at);
  return (
    <Text
      x={x}
      y={y}
      scaleX={1 / scale}
      scaleY={1 / scale}
      offsetX={-8}
      offsetY={LETTERS + 4}
      text={text}
      fontFamily={SANS}
      fontStyle="600"
      fontSize={LETTERS}
      fill={INKS.ink}
      stroke={INKS.sheet}
      strokeWidth={3}
      fillAfterStrokeEnabled
      perfectDrawEnabled={false}
    />
  );
}

const CROSS = 'M-16 0 H-4 M4 0 H16 M0 -16 V-4 M0 4 V16';

/** The cross: open in the middle, so that what it points at is seen. */
function CrossShape({ at, scale }: { readonly at: SitePoint; readonly scale: number }) {
  const [x, y] = toSheet(at);
  const place = { x, y, scaleX: 1 / scale, scaleY: 1 / scale, data: CROSS, ...PEN } as const;
  return (
    <>
      <Path {...place} stroke={INKS.sheet} strokeWidth={5} />
      <Path {...place} stroke={INKS.ink} strokeWidth={2} />
    </>
  );
}
