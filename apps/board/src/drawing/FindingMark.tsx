import type { Severity } from '@loopwright/analysis';
import type { SitePoint } from '@loopwright/model';
import { memo } from 'react';
import type { FindingView } from './finding-view.ts';
import { INKS, severityInk } from './inks.ts';
import { Circle, Line, Path } from './konva-shapes.ts';
import { toSheet } from './site-transform.ts';

/** Shape says the same as colour: diamond, triangle, dot. */
const SIGNS: Readonly<Record<Severity, string>> = {
  stop: 'M0 -8 L8 0 L0 8 L-8 0 Z',
  look: 'M0 -7 L7 5.5 L-7 5.5 Z',
  mention: 'M4.2 0 A4.2 4.2 0 1 1 -4.2 0 A4.2 4.2 0 1 1 4.2 0 Z',
};

interface FindingMarkProps {
  readonly view: FindingView;
  /** Where its sign stands, clear of hole numbers, tees and greens; a line leads from there to its place. */
  readonly at: SitePoint;
  readonly scale: number;
  readonly selected: boolean;
}

/** A finding at its place; the stretch it is about shows for the serious ones and the one picked out. */
export const FindingMark = memo(function FindingMark({ view, at, scale, selected }: FindingMarkProps) {
  const ink = severityInk(view.severity);
  const [x, y] = toSheet(at);
  const place = { x, y, scaleX: 1 / scale, scaleY: 1 / scale };
  const aside = Math.abs(at.x - view.at.x) + Math.abs(at.y - view.at.y) > 1 / scale;
  return (
    <>
      {view.line && (selected || view.severity !== 'mention') && (
        <Line
          points={[...view.line]}
          stroke={ink}
          strokeWidth={selected ? 3 : 1.6}
          dash={[5, 3]}
          opacity={selected ? 1 : 0.75}
          strokeScaleEnabled={false}
          perfectDrawEnabled={false}
        />
      )}
      {aside && (
        <Line
          points={[...toSheet(view.at), x, y]}
          stroke={ink}
          strokeWidth={1}
          strokeScaleEnabled={false}
          perfectDrawEnabled={false}
        />
      )}
      {selected && <Circle {...place} radius={13} stroke={ink} strokeWidth={2} perfectDrawEnabled={false} />}
      <Path
        {...place}
        data={SIGNS[view.severity]}
        fill={ink}
        stroke={INKS.sheet}
        strokeWidth={1.5}
        lineJoin="round"
        perfectDrawEnabled={false}
      />
    </>
  );
});
