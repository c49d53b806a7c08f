import { SAFETY_CAUTION } from '@loopwright/analysis/wording';
import { useMemo, useState } from 'react';
import type { DrawerProps } from '../../board/parts.ts';
import { namesOf } from '../../reading/names.ts';
import { useSteady } from '../../reading/use-steady.ts';
import { Choices } from '../../style/Choices.tsx';
import { FindingItem } from './FindingItem.tsx';
import { FindingsHidden } from './FindingsHidden.tsx';
import { type FindingView, toFindingViews } from './findings-view.ts';
import { countWords, type FindingGrouping, type FindingOrder, groupFindings } from './group-findings.ts';

const GROUPINGS = [
  { key: 'severity', words: 'severity' },
  { key: 'hole', words: 'hole' },
  { key: 'subject', words: 'subject' },
] as const;
const ORDERS = [
  { key: 'listed', words: 'playing order' },
  { key: 'furthest', words: 'worst first' },
] as const;

/** Everything the analysis noticed: grouped, sorted, each a way to its place and to a decision. */
export function FindingsPanel(props: DrawerProps) {
  return props.findingsShown ? <FindingsShown {...props} /> : <FindingsHidden />;
}

function FindingsShown({ plan, routing, analysis, reading, selection, select, goTo, edit }: DrawerProps) {
  const [grouping, setGrouping] = useState<FindingGrouping>('severity');
  const [order, setOrder] = useState<FindingOrder>('listed');
  const views = useMemo(
    () => toFindingViews(plan, routing, analysis.findings, namesOf(plan, routing, reading.units)),
    [plan, routing, analysis.findings, reading.units],
  );
  const groups = useMemo(() => groupFindings(views, grouping, order), [views, grouping, order]);
  const onGo = useSteady((view: FindingView) => {
    select({ finding: view.key });
    goTo({ kind: 'finding', finding: view.key });
  });
  return (
    <>
      <div className="row row--between">
        <Choices label="Group by" choices={GROUPINGS} chosen={grouping} onChoose={setGrouping} />
        <Choices label="Order" choices={ORDERS} chosen={order} onChoose={setOrder} />
      </div>
      <p className="small soft">{countWords(views)}</p>
      {groups.length === 0 && (
        <p className="empty">
          <strong>Nothing noticed.</strong> Every limit is kept with the holes as they lie. The limits themselves are
          under Limits.
        </p>
      )}
      {groups.map((group) => (
        <section key={group.key} className="finding-group">
          <h3 className="finding-group__title">
            {group.title} <span className="soft">{group.findings.length}</span>
          </h3>
          <ul>
            {group.findings.map((view) => (
              <FindingItem
                key={view.key}
                view={view}
                routing={routing.id}
                selected={selection.finding === view.key}
                onGo={onGo}
                edit={edit}
              />
            ))}
          </ul>
        </section>
      ))}
      <p className="caution">{SAFETY_CAUTION}</p>
    </>
  );
}
