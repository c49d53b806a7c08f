import type { HoleId, RoutingId } from '@loopwright/model';
import { memo } from 'react';
import { Input, NumberField } from 'react-aria-components';
import type { DoEdit } from '../../board/parts.ts';
import { saysTheSame } from '../../reading/steady.ts';
import type { PointRow } from './points-view.ts';

/** Coordinates reach 1,000 km from the origin; beyond that the plan does not go. */
const FURTHEST = 1_000_000;

interface PointRowViewProps {
  readonly routing: RoutingId;
  readonly hole: HoleId;
  readonly point: PointRow;
  readonly locked: boolean;
  readonly edit: DoEdit;
}

/** One point: its place to a tenth of a metre, moved by typing or by arrow keys, a metre a press. */
export const PointRowView = memo(function PointRowView({ routing, hole, point, locked, edit }: PointRowViewProps) {
  const { part, east, north, what, pinned } = point;
  const of = { routing, hole, part };
  const moveTo = (x: number, y: number) => edit({ ...of, edit: 'move part', to: { x, y } });
  const fixed = locked || pinned;
  return (
    <tr className={point.proposed ? 'proposed' : undefined}>
      <th scope="row">
        {what}
        {point.proposed && ' (proposed)'}
      </th>
      <td>
        <Coordinate label={`${what}, metres east`} value={east} fixed={fixed} onMove={(x) => moveTo(x, north)} />
      </td>
      <td>
        <Coordinate label={`${what}, metres north`} value={north} fixed={fixed} onMove={(y) => moveTo(east, y)} />
      </td>
      <td>
        <input
          type="checkbox"
          aria-label={`${what} pinned: stays where it is`}
          checked={pinned}
          disabled={locked}
          onChange={() => edit({ ...of, edit: pinned ? 'unpin' : 'pin' })}
        />
      </td>
    </tr>
  );
}, saysTheSame);

interface CoordinateProps {
  readonly label: string;
  readonly value: number;
  readonly fixed: boolean;
  readonly onMove: (value: number) => void;
}

function Coordinate({ label, value, fixed, onMove }: CoordinateProps) {
  return (
    <NumberField
      aria-label={label}
      value={value}
      minValue={-FURTHEST}
      maxValue={FURTHEST}
      isDisabled={fixed}
      formatOptions={{ minimumFractionDigits: 1, maximumFractionDigits: 1, useGrouping: false }}
      onChange={(typed) => {
        if (!Number.isNaN(typed) && Math.abs(typed - value) >= 0.05) onMove(typed);
      }}
    >
      <Input className="input input--figure point__input" />
    </NumberField>
  );
}
