import { memo } from 'react';
import type { GoTo } from '../../board/parts.ts';
import { saysTheSame } from '../../reading/steady.ts';
import { SeverityMark } from '../../style/SeverityMark.tsx';
import type { FindingChangeView } from './change-view.ts';

interface ChangeListProps {
  readonly title: string;
  readonly none: string;
  readonly changes: readonly FindingChangeView[];
  readonly goTo: GoTo;
}

/** Findings that came or went, the signed change at the right. */
export function ChangeList({ title, none, changes, goTo }: ChangeListProps) {
  return (
    <section className="change-list">
      <h4 className="change-list__title">{title}</h4>
      {changes.length === 0 && <p className="small soft change-list__none">{none}</p>}
      <ul>
        {changes.map((view) => (
          <ChangeItem key={view.key} view={view} goTo={goTo} />
        ))}
      </ul>
    </section>
  );
}

interface ChangeItemProps {
  readonly view: FindingChangeView;
  readonly goTo: GoTo;
}

const ChangeItem = memo(function ChangeItem({ view, goTo }: ChangeItemProps) {
  return (
    <li className="change">
      <SeverityMark severity={view.mark} words={view.mark} />
      <span className="change__text">
        {view.open ? (
          <button type="button" className="finding__go" onClick={() => goTo({ kind: 'finding', finding: view.key })}>
            {view.sentence}
          </button>
        ) : (
          view.sentence
        )}
        {view.below && <span className="small soft">{view.below}</span>}
      </span>
      <b className={`change__tag change__tag--${view.mark}`}>{view.tag}</b>
    </li>
  );
}, saysTheSame);
