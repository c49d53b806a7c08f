import { memo } from 'react';
import type { GoTo } from '../../board/parts.ts';
import { saysTheSame } from '../../reading/steady.ts';
import { WideTable } from '../../style/WideTable.tsx';
import type { CardCell } from './card-totals.ts';
import type { CardLoop, CardRow, CardTotal, CardView } from './card-view.ts';

interface CardTableProps {
  readonly view: CardView;
  readonly goTo: GoTo;
}

/** Numbers, pars and lengths of all tee sets, loop by loop, with the round's total at the foot. */
export function CardTable({ view, goTo }: CardTableProps) {
  return (
    <WideTable label="Lengths and pars">
      <table className="table card-table">
        <caption>Lengths, {view.unit}</caption>
        <thead>
          <tr>
            <th scope="col" className="table__words">
              hole
            </th>
            <th scope="col">par, men</th>
            <th scope="col">par, women</th>
            {view.columns.map(({ teeSet, name }) => (
              <th key={teeSet} scope="col">
                {name}
              </th>
            ))}
          </tr>
        </thead>
        {view.loops.map((loop) => (
          <LoopRows key={loop.loop} loop={loop} goTo={goTo} />
        ))}
        <tfoot>
          {view.rounds.map(({ total }) => (
            <TotalRow key={total.key} total={total} />
          ))}
        </tfoot>
      </table>
    </WideTable>
  );
}

function LoopRows({ loop, goTo }: { readonly loop: CardLoop; readonly goTo: GoTo }) {
  return (
    <tbody>
      {loop.rows.map((row) => (
        <HoleRow key={row.hole} row={row} goTo={goTo} />
      ))}
      {loop.total && <TotalRow total={loop.total} />}
    </tbody>
  );
}

const HoleRow = memo(function HoleRow({ row, goTo }: { readonly row: CardRow; readonly goTo: GoTo }) {
  return (
    <tr title={row.parWords || undefined}>
      <th scope="row">
        <button
          type="button"
          className="place-link"
          aria-label={`Go to hole ${row.number}`}
          onClick={() => goTo({ kind: 'hole', hole: row.hole })}
        >
          {row.number}
        </button>
      </th>
      <td>{row.men}</td>
      <td>{row.women}</td>
      <Cells cells={row.lengths} />
    </tr>
  );
}, saysTheSame);

function TotalRow({ total }: { readonly total: CardTotal }) {
  return (
    <tr className="table__total">
      <th scope="row">{total.name}</th>
      <td>{total.men}</td>
      <td>{total.women}</td>
      <Cells cells={total.lengths} />
    </tr>
  );
}

/** A tee that the designer has not placed is set in italics and said to be proposed. */
function Cells({ cells }: { readonly cells: readonly CardCell[] }) {
  return cells.map(({ teeSet, figure, proposed }) => (
    <td key={teeSet} className={proposed ? 'proposed' : undefined}>
      {figure}
      {proposed && <span className="only-heard"> proposed tee</span>}
    </td>
  ));
}
