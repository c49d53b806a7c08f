import { holeOf } from '@loopwright/model';
import { useCallback, useMemo } from 'react';
import { Button } from 'react-aria-components';
import type { DrawerProps } from '../../board/parts.ts';
import { namesOf } from '../../reading/names.ts';
import { Fold } from '../../style/Fold.tsx';
import { findingRows } from './finding-rows.ts';
import { HoleDecisions } from './HoleDecisions.tsx';
import { IndexList } from './IndexList.tsx';
import { PointsTable } from './PointsTable.tsx';
import { type HolePoints, toHolePoints } from './points-view.ts';
import { countThings, thingRows } from './thing-rows.ts';
import { walkRows } from './walk-rows.ts';

/**
 * Everything on the drawing as a table, for whoever does not see it: holes with their points, walks, findings, and what
 * lies on the land. Each row opens the sheet on which all of it is changed.
 */
export function PointsPanel(props: DrawerProps) {
  const { plan, routing, analysis, reading, selection, select, goTo } = props;
  const holes = useMemo(
    () => toHolePoints(plan, routing, analysis, reading.units),
    [plan, routing, analysis, reading.units],
  );
  const toggle = (hole: string) => {
    if (selection.hole === hole) return select({});
    select({ hole });
    goTo({ kind: 'hole', hole });
  };
  return (
    <>
      <p className="small soft">
        Metres east and north on the site plane. Type a figure, or press the arrow keys to move a metre; each is one
        step to undo. Of a line or an area it is the middle, and all of it moves. A title opens the sheet on which all
        of it is changed.
      </p>
      {holes.length === 0 && (
        <p className="empty">
          <strong>No holes on this routing.</strong> Take up ‘Draw hole’ with D on the drawing, or bring a course file.
        </p>
      )}
      {holes.map((hole) => (
        <Fold
          key={hole.hole}
          title={hole.title}
          count={hole.summary}
          open={selection.hole === hole.hole}
          onToggle={() => toggle(hole.hole)}
        >
          <HoleTable {...props} points={hole} />
        </Fold>
      ))}
      <Index {...props} />
    </>
  );
}

/** What lies between the holes and under them. */
function Index(props: DrawerProps) {
  const { plan, routing, analysis, reading, select, goTo, edit, openSheet, findingsShown } = props;
  const { units } = reading;
  const names = useMemo(() => namesOf(plan, routing, units), [plan, routing, units]);
  const walks = useCallback(() => walkRows(analysis.walks, routing, names), [analysis, routing, names]);
  const findings = useCallback(() => findingRows(analysis, names), [analysis, names]);
  const things = useCallback(() => thingRows({ plan, routing, analysis }, units), [plan, routing, analysis, units]);
  return (
    <>
      <IndexList
        title="Walks"
        count={analysis.walks.length}
        rows={walks}
        edit={edit}
        open={({ hole, key }) => {
          select({ hole, walk: key });
          goTo({ kind: 'walk', key });
          openSheet?.('hole');
        }}
      />
      {findingsShown && (
        <IndexList
          title="Findings at their places"
          count={analysis.findings.length}
          rows={findings}
          edit={edit}
          open={({ key }) => {
            select({ finding: key });
            goTo({ kind: 'finding', finding: key });
            openSheet?.('findings');
          }}
        />
      )}
      <IndexList
        title="On the land"
        count={countThings(plan.site)}
        rows={things}
        edit={edit}
        open={({ thing, at }) => {
          select({ thing });
          if (at) goTo({ kind: 'point', at });
          openSheet?.('site');
        }}
      />
    </>
  );
}

function HoleTable({ routing, edit, points, more, openSheet }: DrawerProps & { readonly points: HolePoints }) {
  const hole = holeOf(routing, points.hole);
  return (
    <>
      <PointsTable
        routing={routing.id}
        hole={points.hole}
        title={points.title}
        points={points.points}
        locked={routing.locked}
        edit={edit}
      />
      {points.drawn && <p className="small soft">{points.drawn}</p>}
      {hole && (
        <HoleDecisions routing={routing.id} hole={hole} number={points.number} locked={routing.locked} edit={edit} />
      )}
      <div className="row points__more">
        {openSheet && (
          <Button className="button button--small" onPress={() => openSheet('hole')}>
            All of {points.title.toLocaleLowerCase('en').split(',', 1)[0]}
          </Button>
        )}
        <Button
          className="button button--small"
          aria-haspopup="menu"
          aria-label={`What can be done with ${points.title}`}
          onPress={({ target }) => {
            const box = target.getBoundingClientRect();
            more({ x: box.left, y: box.bottom });
          }}
        >
          More …
        </Button>
      </div>
    </>
  );
}
