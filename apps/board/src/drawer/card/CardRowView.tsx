import type { HoleId, RoutingId } from '@loopwright/model';
import { memo } from 'react';
import type { DoEdit, GoTo } from '../../board/parts.ts';
import { saysTheSame } from '../../reading/steady.ts';
import { useSteady } from '../../reading/use-steady.ts';
import { CommitField } from '../../style/CommitField.tsx';
import { fieldBeside } from '../../style/field-beside.ts';
import type { CardCell } from './card-totals.ts';
import type { CardPar, CardRow } from './card-view.ts';
import { typedPar } from './typed-par.ts';

interface CardRowViewProps {
  readonly row: CardRow;
  readonly routing: RoutingId;
  readonly locked: boolean;
  readonly goTo: GoTo;
  readonly edit: DoEdit;
}

/** One hole on the card: its pars can be typed over, its lengths are measured. */
export const CardRowView = memo(function CardRowView({ row, routing, locked, goTo, edit }: CardRowViewProps) {
  const { hole, number, men, women } = row;
  return (
    <tr title={row.parWords || undefined}>
      <th scope="row">
        <button
          type="button"
          className="place-link"
          aria-label={`Go to hole ${number}`}
          onClick={() => goTo({ kind: 'hole', hole })}
        >
          {number}
        </button>
      </th>
      <td className="card-table__par">
        <Par of={{ routing, hole }} sex="men" par={men} number={number} locked={locked} edit={edit} />
      </td>
      <td className="card-table__par">
        <Par of={{ routing, hole }} sex="women" par={women} number={number} locked={locked} edit={edit} />
      </td>
      <Cells cells={row.lengths} />
    </tr>
  );
}, saysTheSame);

interface ParProps {
  readonly of: { readonly routing: RoutingId; readonly hole: HoleId };
  readonly sex: 'men' | 'women';
  readonly par: CardPar;
  readonly number: string;
  readonly locked: boolean;
  readonly edit: DoEdit;
}

/** A par in its field: written in where it was chosen, behind an empty field where it follows the length. */
function Par({ of, sex, par, number, locked, edit }: ParProps) {
  const commit = useSteady((typed: string) => {
    const answer = typedPar(typed);
    if (answer.kind === 'wrong') return answer.why;
    edit({ ...of, edit: 'set par', sex, par: answer.par });
    return undefined;
  });
  const follows = par.chosen === 'by length';
  const label = `Par of hole ${number} for ${sex}${follows ? `, by length: ${par.figure}` : ', chosen'}`;
  return (
    <CommitField
      className="card-table__par-field"
      label={label}
      value={follows ? '' : par.figure}
      placeholder={par.figure}
      disabled={locked}
      maxLength={9}
      onCommit={commit}
      onLeave={fieldBeside}
    />
  );
}

/** A tee that the designer has not placed is set in italics and said to be proposed. */
export function Cells({ cells }: { readonly cells: readonly CardCell[] }) {
  return cells.map(({ teeSet, figure, proposed }) => (
    <td key={teeSet} className={proposed ? 'proposed' : undefined}>
      {figure}
      {proposed && <span className="only-heard"> proposed tee</span>}
    </td>
  ));
}
