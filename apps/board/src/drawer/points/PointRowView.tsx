import type { NamedEdit } from '@loopwright/document';
import { type HoleId, pointToMillimetre, type RoutingId } from '@loopwright/model';
import { memo } from 'react';
import type { DoEdit } from '../../board/parts.ts';
import { saysTheSame } from '../../reading/steady.ts';
import { TypedField } from '../typed/TypedField.tsx';
import { coordinateAnswer } from '../typed/typed-answer.ts';
import type { PointRow } from './points-view.ts';

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
  const movedTo = (x: number, y: number): NamedEdit => ({ ...of, edit: 'move part', to: pointToMillimetre({ x, y }) });
  const fixed = locked || pinned;
  return (
    <tr className={point.proposed ? 'proposed' : undefined}>
      <th scope="row">
        {what}
        {point.proposed && ' (proposed)'}
      </th>
      <td>
        <Coordinate
          label={`${what}, metres east`}
          value={east}
          fixed={fixed}
          moved={(x) => movedTo(x, north)}
          edit={edit}
        />
      </td>
      <td>
        <Coordinate
          label={`${what}, metres north`}
          value={north}
          fixed={fixed}
          moved={(y) => movedTo(east, y)}
          edit={edit}
        />
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
  readonly moved: (value: number) => NamedEdit;
  readonly edit: DoEdit;
}

function Coordinate({ label, value, fixed, moved, edit }: CoordinateProps) {
  return (
    <div className="point__input">
      <TypedField
        label={label}
        shown={value.toFixed(1)}
        disabled={fixed}
        answer={(typed) => coordinateAnswer(typed, value, moved)}
        step={(by) => moved(value + by)}
        edit={edit}
      />
    </div>
  );
}
