import { memo } from 'react';
import type { DoEdit, GoTo } from '../../board/parts.ts';
import { saysTheSame } from '../../reading/steady.ts';
import { WideTable } from '../../style/WideTable.tsx';
import { CardRowView, Cells } from './CardRowView.tsx';
import type { CardDifference } from './card-differences.ts';
import type { CardLoop, CardTotal, CardView } from './card-view.ts';

interface CardHands {
  readonly routing: string;
  readonly locked: boolean;
  readonly goTo: GoTo;
  readonly edit: DoEdit;
}

interface CardTableProps extends CardHands {
  readonly view: CardView;
}

/** Numbers, pars and lengths of all tee sets, loop by loop, with the round's totals and differences at the foot. */
export function CardTable({ view, ...hands }: CardTableProps) {
  return (
    <WideTable label="Lengths and pars">
      <table className="table card-table">
        <caption>Lengths, {view.unit}</caption>
        <thead>
          <tr>
            <th scope="col" className="table__words">
              hole
            </th>
            <th scope="col" className="card-table__par">
              par, men
            </th>
            <th scope="col" className="card-table__par">
              par, women
            </th>
            {view.columns.map(({ teeSet, name, player }) => (
              <th key={teeSet} scope="col" title={`for the ${player}`}>
                <bdi className="card-table__set">{name}</bdi>
              </th>
            ))}
          </tr>
        </thead>
        {view.loops.map((loop) => (
          <LoopRows key={loop.loop} loop={loop} {...hands} />
        ))}
        <tfoot>
          {view.rounds.map(({ total }) => (
            <TotalRow key={total.key} total={total} />
          ))}
          {view.differences.map((difference) => (
            <DifferenceRow key={difference.key} difference={difference} />
          ))}
        </tfoot>
      </table>
    </WideTable>
  );
}

function LoopRows({ loop, ...hands }: CardHands & { readonly loop: CardLoop }) {
  return (
    <tbody>
      {loop.rows.map((row) => (
        <CardRowView key={row.hole} row={row} {...hands} />
      ))}
      {loop.total && <TotalRow total={loop.total} />}
    </tbody>
  );
}

const TotalRow = memo(function TotalRow({ total }: { readonly total: CardTotal }) {
  return (
    <tr className="table__total">
      <th scope="row">
        <bdi title={total.name}>{total.name}</bdi>
      </th>
      <td className="card-table__par">{total.men}</td>
      <td className="card-table__par">{total.women}</td>
      <Cells cells={total.lengths} />
    </tr>
  );
}, saysTheSame);

const DifferenceRow = memo(function DifferenceRow({ difference }: { readonly difference: CardDifference }) {
  return (
    <tr className="card-table__difference">
      <th scope="row" colSpan={3}>
        <bdi title={difference.name}>{difference.name}</bdi>
      </th>
      {difference.lengths.map(({ teeSet, figure }) => (
        <td key={teeSet}>{figure}</td>
      ))}
    </tr>
  );
}, saysTheSame);
