import { holeOf } from '@loopwright/model';
import { useMemo } from 'react';
import type { DrawerProps } from '../../board/parts.ts';
import { Fold } from '../../style/Fold.tsx';
import { HoleDecisions } from './HoleDecisions.tsx';
import { PointsTable } from './PointsTable.tsx';
import { type HolePoints, toHolePoints } from './points-view.ts';

/** Every hole and every point of it as a table: the keyboard and screen-reader equal of the drawing. */
export function PointsPanel(props: DrawerProps) {
  const { plan, routing, analysis, reading, selection, select, goTo } = props;
  const holes = useMemo(
    () => toHolePoints(plan, routing, analysis, reading.units),
    [plan, routing, analysis, reading.units],
  );
  if (holes.length === 0) {
    return (
      <p className="empty">
        <strong>No holes yet on {props.routing.name}.</strong> Press D to draw the first one: its tee, its turns, its
        green.
      </p>
    );
  }
  const toggle = (hole: string) => {
    if (selection.hole === hole) return select({});
    select({ hole });
    goTo({ kind: 'hole', hole });
  };
  return (
    <>
      <p className="small soft">
        Metres east and north on the site plane. Type a figure, or press the arrow keys to move a metre; each is one
        step to undo.
      </p>
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
    </>
  );
}

function HoleTable({ routing, edit, points }: DrawerProps & { readonly points: HolePoints }) {
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
      {hole && (
        <HoleDecisions routing={routing.id} hole={hole} number={points.number} locked={routing.locked} edit={edit} />
      )}
    </>
  );
}
