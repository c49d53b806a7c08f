import './points.css';
import type { HoleId, RoutingId } from '@loopwright/model';
import type { DoEdit } from '../../board/parts.ts';
import { WideTable } from '../../style/WideTable.tsx';
import { PointRowView } from './PointRowView.tsx';
import type { PointRow } from './points-view.ts';

interface PointsTableProps {
  readonly routing: RoutingId;
  readonly hole: HoleId;
  readonly title: string;
  readonly points: readonly PointRow[];
  readonly locked: boolean;
  readonly edit: DoEdit;
}

/** The points of one hole with their coordinates and pins. */
export function PointsTable({ routing, hole, title, points, locked, edit }: PointsTableProps) {
  return (
    <WideTable label={`Points of ${title}`}>
      <table className="table points" aria-label={`Points of ${title}`}>
        <thead>
          <tr>
            <th scope="col" className="table__words">
              point
            </th>
            <th scope="col">east, m</th>
            <th scope="col">north, m</th>
            <th scope="col">pinned</th>
          </tr>
        </thead>
        <tbody>
          {points.map((point) => (
            <PointRowView key={point.part} routing={routing} hole={hole} point={point} locked={locked} edit={edit} />
          ))}
        </tbody>
      </table>
    </WideTable>
  );
}
