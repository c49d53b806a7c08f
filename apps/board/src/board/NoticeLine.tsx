import type { NamedEdit } from '@loopwright/document';
import type { LengthUnit } from '@loopwright/model';
import { useEffect } from 'react';
import { Button } from 'react-aria-components';
import type { BoardSession } from '../live/board-session.ts';
import type { Frame } from '../live/frame.ts';
import { useWatched } from '../live/use-watched.ts';
import { namesOf } from '../reading/names.ts';
import { stepWords } from '../reading/step-words.ts';
import { noticeWords } from './notice-words.ts';

interface NoticeLineProps {
  readonly session: BoardSession;
  readonly frame: Frame;
  readonly units: LengthUnit;
}

/** Long enough to be read twice, in milliseconds. */
const SHOWN_FOR = 7000;

/** What came of the last step, at the foot of the drawing; goes away by itself. */
export function NoticeLine({ session, frame, units }: NoticeLineProps) {
  const notice = useWatched(session.notice);
  useEffect(() => {
    if (!notice) return undefined;
    const timer = setTimeout(session.dismissNotice, SHOWN_FOR);
    return () => clearTimeout(timer);
  }, [notice, session]);
  const step = (edit: NamedEdit) => stepWords(edit, namesOf(frame.plan, frame.routing, units), frame.plan.teeSets);
  const words = notice && noticeWords(notice, step);
  return (
    <div role="status">
      {words && (
        <p className="plan__word">
          {words}
          <Button className="button button--quiet" onPress={session.dismissNotice}>
            Close
          </Button>
        </p>
      )}
    </div>
  );
}
