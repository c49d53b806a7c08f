import { SAFETY_CAUTION } from '@loopwright/analysis/wording';
import { useMemo } from 'react';
import type { Change, DrawerProps, GoTo } from '../../board/parts.ts';
import { inkOf } from '../../board/people-inks.ts';
import { unitSymbol } from '../../reading/lengths.ts';
import { namesOf } from '../../reading/names.ts';
import { FindingsHidden } from '../findings/FindingsHidden.tsx';
import { ChangeList } from './ChangeList.tsx';
import { changeTitle } from './change-title.ts';
import { type ChangeLists, toChangeLists } from './change-view.ts';
import { FiguresTable } from './FiguresTable.tsx';
import { toFigureRows } from './figures-view.ts';
import { TotalsTable } from './TotalsTable.tsx';
import { toTotals } from './totals-view.ts';

/** What the last change did, or what the drag in progress is doing. */
export function WhatChanged({ plan, routing, analysis, reading, change, findingsShown, goTo }: DrawerProps) {
  const totals = useMemo(() => toTotals(routing, analysis, change, reading), [routing, analysis, change, reading]);
  return (
    <>
      {change ? (
        <ChangeTold {...{ change, plan, routing, analysis, reading, findingsShown, goTo }} />
      ) : (
        <p className="empty">
          <strong>Nothing has changed yet.</strong> Drag a tee, a turn point or a green: what it does to every other
          hole is told here while it moves.
        </p>
      )}
      <TotalsTable rows={totals} unit={unitSymbol(reading.units)} />
      <p className="caution">{SAFETY_CAUTION}</p>
    </>
  );
}

type ChangeToldProps = Pick<DrawerProps, 'plan' | 'routing' | 'analysis' | 'reading' | 'findingsShown' | 'goTo'> & {
  readonly change: Change;
};

function ChangeTold({ change, plan, routing, analysis, reading, findingsShown, goTo }: ChangeToldProps) {
  const names = useMemo(() => namesOf(plan, routing, reading.units), [plan, routing, reading.units]);
  const title = useMemo(
    () => changeTitle(change, { plan, routing, analysis }, reading.units),
    [change, plan, routing, analysis, reading.units],
  );
  const lists = useMemo(() => toChangeLists(change, names), [change, names]);
  const figures = useMemo(() => toFigureRows(change, names, reading), [change, names, reading]);
  return (
    <>
      <header className="changed__head">
        <h3 className="changed__title">{title}</h3>
        <p className="soft">
          <Who change={change} />
        </p>
      </header>
      {findingsShown ? <Lists lists={lists} goTo={goTo} /> : <FindingsHidden />}
      <FiguresTable rows={figures} unit={unitSymbol(reading.units)} />
    </>
  );
}

function Who({ change }: { readonly change: Change }) {
  const name = change.by ? <b style={{ color: inkOf(change.by.ink).colour }}>{change.by.name}</b> : 'You';
  if (change.state === 'done') return <>{name} · against the moment before</>;
  return (
    <>
      {name} {change.by ? 'is' : 'are'} dragging · against the moment of picking up
    </>
  );
}

function Lists({ lists, goTo }: { readonly lists: ChangeLists; readonly goTo: GoTo }) {
  return (
    <>
      <ChangeList title="What got worse" none="Nothing got worse." changes={lists.worse} goTo={goTo} />
      <ChangeList title="What got better" none="Nothing came inside its limit." changes={lists.better} goTo={goTo} />
    </>
  );
}
