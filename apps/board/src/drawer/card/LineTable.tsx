import { memo } from 'react';
import { saysTheSame } from '../../reading/steady.ts';
import { WideTable } from '../../style/WideTable.tsx';
import type { LineRow, LineView } from './line-view.ts';

/** Direction, bends, shot into the green, walk on: how each hole plays from the tees in use. */
export function LineTable({ view, unit }: { readonly view: LineView; readonly unit: string }) {
  return (
    <WideTable label="Lines of play and walks">
      <table className="table line-table">
        <caption>
          Lines of play from {view.teeSet}, {unit}
        </caption>
        <thead>
          <tr>
            <th scope="col" className="table__words">
              hole
            </th>
            <th scope="col">plays</th>
            <th scope="col" className="table__words">
              bends
            </th>
            <th scope="col">approach</th>
            <th scope="col" className="table__words">
              club
            </th>
            <th scope="col">walk</th>
            <th scope="col">back</th>
          </tr>
        </thead>
        <tbody>
          {view.rows.map((row) => (
            <Line key={row.hole} row={row} />
          ))}
        </tbody>
      </table>
      <p className="small soft">
        Shots and clubs: the {view.player} of the tee set, on the level. Back: walked against the next line of play.
      </p>
    </WideTable>
  );
}

const Line = memo(function Line({ row }: { readonly row: LineRow }) {
  return (
    <tr>
      <th scope="row">{row.number}</th>
      <td>{row.direction}</td>
      <td className="table__words">{row.bends}</td>
      <td>{row.approach}</td>
      <td className="table__words">{row.club}</td>
      <td>{row.walk}</td>
      <td className="soft">{row.back}</td>
    </tr>
  );
}, saysTheSame);
