import type { Person } from '@loopwright/document';
import type { RoutingId } from '@loopwright/model';
import { memo } from 'react';
import { Head } from '../head/Head.tsx';
import type { BoardSession } from '../live/board-session.ts';
import { routingShown } from '../live/frame.ts';
import { saveBoardFile } from '../live/save-board-file.ts';
import { useWatched } from '../live/use-watched.ts';
import type { GoTo, Me, Reading } from './parts.ts';

interface BoardHeadProps {
  readonly session: BoardSession;
  readonly routing: RoutingId;
  readonly me: Me;
  readonly roster: readonly Person[];
  readonly reading: Reading;
  readonly setReading: (reading: Reading) => void;
  readonly findingsShown: boolean;
  readonly setFindingsShown: (shown: boolean) => void;
  readonly inviteLink: string;
  readonly goTo: GoTo;
  readonly openKeys: () => void;
}

/** The head of a board. It speaks of what is written, so a drag in progress does not show it anew. */
export const BoardHead = memo(function BoardHead({ session, ...props }: BoardHeadProps) {
  const plan = useWatched(session.writtenPlan);
  const saved = useWatched(session.saved);
  const steps = useWatched(session.steps);
  const done = useWatched(session.done);
  const routing = routingShown(plan, props.routing);
  if (!routing) return null;
  return (
    <Head
      siteName={plan.site.name}
      {...(plan.site.note === undefined ? {} : { siteNote: plan.site.note })}
      {...(plan.site.units === undefined ? {} : { siteUnits: plan.site.units })}
      routing={routing}
      routings={plan.routings}
      teeSets={plan.teeSets}
      me={props.me}
      people={props.roster}
      saved={saved}
      reading={props.reading}
      findingsShown={props.findingsShown}
      {...(steps.undo ? { undoStep: steps.undo } : {})}
      {...(steps.redo ? { redoStep: steps.redo } : {})}
      done={done}
      inviteLink={props.inviteLink}
      onUndo={session.undo}
      onRedo={session.redo}
      onPutBack={session.putBack}
      edit={session.edit}
      onReading={props.setReading}
      onFindingsShown={props.setFindingsShown}
      onRouting={session.showRouting}
      onFlip={session.flipRouting}
      goTo={props.goTo}
      onSaveFile={() => void saveBoardFile(session.writtenPlan.get())}
      onKeys={props.openKeys}
    />
  );
});
