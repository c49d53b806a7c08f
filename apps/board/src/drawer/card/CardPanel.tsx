import { useMemo } from 'react';
import type { DrawerProps } from '../../board/parts.ts';
import { RosePanel } from '../rose/Rose.tsx';
import { CardTable } from './CardTable.tsx';
import type { CardRound } from './card-view.ts';
import { toCardView } from './card-view.ts';
import { LineTable } from './LineTable.tsx';
import { toLineView } from './line-view.ts';
import { RATING_CAUTION, type RatingRow, toRatingRows } from './ratings-view.ts';

/** The card, the lines of play, the way on foot, the rose and the provisional length rating. */
export function CardPanel({ plan, routing, analysis, reading, goTo }: DrawerProps) {
  const card = useMemo(() => toCardView(plan, routing, analysis, reading.units), [plan, routing, analysis, reading]);
  const lines = useMemo(() => toLineView(plan, routing, analysis, reading), [plan, routing, analysis, reading]);
  if (card.loops.every(({ rows }) => rows.length === 0)) {
    return (
      <p className="empty">
        <strong>No holes in the round yet.</strong> Bring a hole back from the spare tray, or drop a course file on the
        board to make a new one.
      </p>
    );
  }
  return (
    <>
      <CardTable view={card} goTo={goTo} />
      <p className="small soft">
        {card.incomplete && `Incomplete and not counted: hole ${card.incomplete}. `}
        Every length is rounded before it is summed, as on a printed card; <i>italic</i> lengths are from proposed tees.
      </p>
      {card.rounds.map((round) => (
        <OnFoot key={round.total.key} round={round} unit={card.unit} />
      ))}
      <LineTable view={lines} unit={card.unit} />
      {analysis.rounds.map((round) => (
        <RosePanel key={round.round} round={round} units={reading.units} />
      ))}
      {analysis.rounds.map((round) => (
        <Ratings key={round.round} rows={toRatingRows(round, plan)} />
      ))}
    </>
  );
}

function OnFoot({ round, unit }: { readonly round: CardRound; readonly unit: string }) {
  return (
    <dl className="facts">
      <dt>Walks in all, {round.total.name}</dt>
      <dd>
        {round.walked} {unit}
      </dd>
      <dt>On foot in all, straight lines</dt>
      <dd>
        {round.onFoot} {unit}
      </dd>
      <dt>Walking time without the play</dt>
      <dd>{round.time}</dd>
      <dt>Climb</dt>
      <dd>no ground yet</dd>
    </dl>
  );
}

function Ratings({ rows }: { readonly rows: readonly RatingRow[] }) {
  if (rows.length === 0) return null;
  return (
    <section aria-label="Length rating, provisional">
      <table className="table">
        <caption>Length rating, provisional</caption>
        <thead>
          <tr>
            <th scope="col" className="table__words">
              tees
            </th>
            <th scope="col" className="table__words">
              for
            </th>
            <th scope="col">scratch</th>
            <th scope="col">bogey</th>
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={row.key}>
              <th scope="row">{row.teeSet}</th>
              <td className="table__words">{row.sex}</td>
              <td>{row.scratch}</td>
              <td>{row.bogey}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p className="caution">{RATING_CAUTION}</p>
    </section>
  );
}
