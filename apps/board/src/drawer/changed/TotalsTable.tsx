import { WideTable } from '../../style/WideTable.tsx';
import type { Changed, TotalsRow } from './totals-view.ts';

/** Loops and rounds: par, length, walks, with the signed change beside each value. */
export function TotalsTable({ rows, unit }: { readonly rows: readonly TotalsRow[]; readonly unit: string }) {
  return (
    <WideTable label="Totals">
      <table className="table totals">
        <caption>Totals, {unit}</caption>
        <thead>
          <tr>
            <th scope="col" className="table__words">
              <span className="only-heard">loop or round</span>
            </th>
            <th scope="col">par</th>
            <th scope="col">length</th>
            <th scope="col">walks</th>
          </tr>
        </thead>
        <tbody>
          {rows.map(({ key, name, kind, par, length, walk }) => (
            <tr key={key} className={kind === 'round' ? 'table__total' : undefined}>
              <th scope="row">{name}</th>
              <ChangedCell value={par} />
              <ChangedCell value={length} />
              <ChangedCell value={walk} />
            </tr>
          ))}
        </tbody>
      </table>
      <p className="small soft">Climb: no ground yet.</p>
    </WideTable>
  );
}

/** Value and sign in columns of their own width, so that nothing shifts while figures run. */
export function ChangedCell({ value }: { readonly value: Changed }) {
  return (
    <td>
      <span className="changed-cell">
        <span>{value.figure}</span>
        <b className={`changed-cell__sign changed-cell__sign--${value.sense}`}>{value.change}</b>
      </span>
    </td>
  );
}
