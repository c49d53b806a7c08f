import { memo } from 'react';
import { saysTheSame } from '../../reading/steady.ts';
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
          {rows.map(({ key, ...row }) => (
            <Row key={key} {...row} />
          ))}
        </tbody>
      </table>
      <p className="small soft">Climb: no ground yet.</p>
    </WideTable>
  );
}

/** One loop or round; not drawn again while a drag changes the others alone. */
const Row = memo(function Row({ name, kind, par, length, walk }: Omit<TotalsRow, 'key'>) {
  return (
    <tr className={kind === 'round' ? 'table__total' : undefined}>
      <th scope="row">{name}</th>
      <ChangedCell value={par} />
      <ChangedCell value={length} />
      <ChangedCell value={walk} />
    </tr>
  );
}, saysTheSame);

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
