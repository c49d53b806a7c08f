import { WideTable } from '../../style/WideTable.tsx';
import type { FigureRow } from './figures-view.ts';

/** Every hole and walk whose figures differ. */
export function FiguresTable({ rows, unit }: { readonly rows: readonly FigureRow[]; readonly unit: string }) {
  if (rows.length === 0) return null;
  return (
    <WideTable label="Holes and walks that changed">
      <table className="table figures">
        <caption>Holes and walks, {unit}</caption>
        <thead>
          <tr>
            <th scope="col" className="table__words">
              <span className="only-heard">what</span>
            </th>
            <th scope="col">before</th>
            <th scope="col">now</th>
            <th scope="col">change</th>
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={row.key}>
              <th scope="row">{row.what}</th>
              <td>{row.before}</td>
              <td>{row.after}</td>
              <td>
                <b className={`changed-cell__sign--${row.sense}`}>{row.change}</b>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </WideTable>
  );
}
