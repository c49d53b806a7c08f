import type { RoutingId } from '@loopwright/model';
import { memo, useEffect, useRef, useState } from 'react';
import type { DoEdit } from '../../board/parts.ts';
import { saysTheSame } from '../../reading/steady.ts';
import { SeverityMark } from '../../style/SeverityMark.tsx';
import { useArrival } from '../use-arrival.ts';
import { DispositionForm } from './DispositionForm.tsx';
import type { FindingView } from './findings-view.ts';

interface FindingItemProps {
  readonly view: FindingView;
  readonly routing: RoutingId;
  readonly selected: boolean;
  readonly onGo: (view: FindingView) => void;
  readonly edit: DoEdit;
}

/** One finding: the sentence, with measure and limit, goes to its place; below it the source and what was decided. */
export const FindingItem = memo(function FindingItem({ view, routing, selected, onGo, edit }: FindingItemProps) {
  const [deciding, setDeciding] = useState(false);
  const item = useRef<HTMLLIElement>(null);
  const button = useRef<HTMLButtonElement>(null);
  useEffect(() => {
    if (selected) item.current?.scrollIntoView({ block: 'nearest' });
  }, [selected]);
  useArrival(button, selected);
  return (
    <li ref={item} className={`finding finding--${view.state}${selected ? ' finding--selected' : ''}`}>
      <SeverityMark severity={view.severity} words={view.severityWord} />
      <div className="finding__text">
        <button ref={button} type="button" className="finding__go" aria-current={selected} onClick={() => onGo(view)}>
          {view.sentence}
        </button>
        <p className="small soft">{view.source}</p>
        <Decision view={view} routing={routing} edit={edit} />
        {deciding && <DispositionForm view={view} routing={routing} edit={edit} onDone={() => setDeciding(false)} />}
        {!deciding && view.state !== 'decided' && (
          <button
            type="button"
            className="button button--small button--quiet finding__decide"
            aria-label={`Decide about: ${view.sentence}`}
            onClick={() => setDeciding(true)}
          >
            Decide …
          </button>
        )}
      </div>
    </li>
  );
}, saysTheSame);

type DecisionProps = Pick<FindingItemProps, 'view' | 'routing' | 'edit'>;

function Decision({ view, routing, edit }: DecisionProps) {
  if (view.state === 'open') return null;
  return (
    <p className="finding__decided">
      {view.state === 'reopened' && <strong>Open again, it has become worse. </strong>}
      {view.decided}{' '}
      <button
        type="button"
        className="button button--small button--quiet"
        aria-label={`Reopen: ${view.sentence}`}
        onClick={() => edit({ edit: 'reopen', routing, finding: view.key })}
      >
        Reopen
      </button>
    </p>
  );
}
