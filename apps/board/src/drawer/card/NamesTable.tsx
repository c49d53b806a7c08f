import { LIMITS, type RoutingId } from '@loopwright/model';
import { memo } from 'react';
import type { DoEdit } from '../../board/parts.ts';
import { saysTheSame } from '../../reading/steady.ts';
import { useSteady } from '../../reading/use-steady.ts';
import { CommitField } from '../../style/CommitField.tsx';
import { fieldBeside } from '../../style/field-beside.ts';
import { WideTable } from '../../style/WideTable.tsx';
import { VerdictSelect } from '../points/VerdictSelect.tsx';
import type { NamesRow } from './names-view.ts';

interface NamesHands {
  readonly routing: RoutingId;
  readonly locked: boolean;
  readonly edit: DoEdit;
}

/** What the designer calls and thinks of every hole, changed in place. */
export function NamesTable({ rows, ...hands }: NamesHands & { readonly rows: readonly NamesRow[] }) {
  return (
    <WideTable label="Names and verdicts">
      <table className="table names-table">
        <thead>
          <tr>
            <th scope="col" className="table__words">
              hole
            </th>
            <th scope="col" className="table__words">
              name
            </th>
            <th scope="col" className="table__words">
              verdict
            </th>
            <th scope="col" className="table__words">
              because
            </th>
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <NamesRowView key={row.hole} row={row} {...hands} />
          ))}
        </tbody>
      </table>
    </WideTable>
  );
}

const NamesRowView = memo(function NamesRowView({
  row,
  routing,
  locked,
  edit,
}: NamesHands & { readonly row: NamesRow }) {
  const { hole, number, name, verdict, reason } = row;
  const of = { routing, hole };
  const rename = useSteady((typed: string) => {
    edit({ ...of, edit: 'name hole', name: typed.trim() });
    return undefined;
  });
  const explain = useSteady((typed: string) => {
    edit({ ...of, edit: 'judge', verdict, reason: typed.trim() });
    return undefined;
  });
  const field = { disabled: locked, onLeave: fieldBeside } as const;
  return (
    <tr>
      <th scope="row">{number}</th>
      <td>
        <CommitField
          label={`Name of hole ${number}`}
          value={name}
          maxLength={LIMITS.name}
          onCommit={rename}
          {...field}
        />
      </td>
      <td>
        <VerdictSelect
          className="input commit__input names-table__verdict"
          number={number}
          verdict={verdict}
          disabled={locked}
          onVerdict={(chosen) => edit({ ...of, edit: 'judge', verdict: chosen, reason })}
        />
      </td>
      <td>
        <CommitField
          label={`Why hole ${number} is ${verdict}`}
          value={reason}
          maxLength={LIMITS.note}
          onCommit={explain}
          {...field}
        />
      </td>
    </tr>
  );
}, saysTheSame);
