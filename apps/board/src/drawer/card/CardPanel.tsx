import { lazy, Suspense, useMemo, useState } from 'react';
import { Button } from 'react-aria-components';
import type { DrawerProps } from '../../board/parts.ts';
import { Fold } from '../../style/Fold.tsx';
import { CardTable } from './CardTable.tsx';
import { toCardView } from './card-view.ts';
import { NamesTable } from './NamesTable.tsx';
import { toNamesRows } from './names-view.ts';
import './card.css';

const RoundOnCard = lazy(() => import('./RoundOnCard.tsx').then((part) => ({ default: part.RoundOnCard })));
const TeeSetsSheet = lazy(() => import('./tee-sets/TeeSetsSheet.tsx').then((part) => ({ default: part.TeeSetsSheet })));

/** The card: lengths and pars of all tee sets, names and verdicts, the way on foot; then the round in bars. */
export function CardPanel({ plan, routing, analysis, reading, goTo, edit }: DrawerProps) {
  const [chosen, setChosen] = useState('');
  const round = analysis.rounds.find((each) => each.round === chosen) ?? analysis.rounds[0];
  const card = useMemo(
    () => toCardView(plan, routing, analysis, reading.units, round?.round),
    [plan, routing, analysis, reading, round],
  );
  const [namesOpen, setNamesOpen] = useState(false);
  const of = { routing: routing.id, locked: routing.locked, edit };
  if (card.loops.every(({ rows }) => rows.length === 0)) return <NoHoles spare={routing.spare.length} />;
  return (
    <>
      {routing.rounds.length > 1 && (
        <label className="field">
          <span className="field__label">Round compared and shown in bars</span>
          <select className="input" value={round?.round} onChange={(event) => setChosen(event.target.value)}>
            {routing.rounds.map(({ id, name }) => (
              <option key={id} value={id}>
                {name}
              </option>
            ))}
          </select>
        </label>
      )}
      <div>
        <CardTable view={card} goTo={goTo} {...of} />
        <p className="small soft">
          {card.incomplete && `Incomplete and not counted: hole ${card.incomplete}. `}
          Every length is rounded before it is summed, as on a printed card; <i>italic</i> lengths are from proposed
          tees. A par typed in stays; a soft one follows the length.
        </p>
        <TeeSets plan={plan} edit={edit} />
      </div>
      <Fold title="Names and verdicts" open={namesOpen} onToggle={() => setNamesOpen(!namesOpen)}>
        <NamesTable rows={toNamesRows(plan, routing)} {...of} />
      </Fold>
      <Suspense fallback={<p className="drawer__wait soft small">Fetching the bars …</p>}>
        <RoundOnCard {...{ card, round, plan, routing, analysis, reading }} />
      </Suspense>
    </>
  );
}

function NoHoles({ spare }: { readonly spare: number }) {
  return (
    <p className="empty">
      <strong>No holes in the round yet.</strong>{' '}
      {spare > 0
        ? 'Bring a hole back from the spare tray: its menu in the round says ‘Bring back’.'
        : 'Draw the first one: press D, then its tee, its turns and its green.'}
    </p>
  );
}

/** Opens the sheet of tee sets. */
function TeeSets({ plan, edit }: Pick<DrawerProps, 'plan' | 'edit'>) {
  const [open, setOpen] = useState(false);
  return (
    <>
      <Button className="button button--small" onPress={() => setOpen(true)}>
        Tee sets …
      </Button>
      {open && (
        <Suspense fallback={null}>
          <TeeSetsSheet plan={plan} edit={edit} onClose={() => setOpen(false)} />
        </Suspense>
      )}
    </>
  );
}
