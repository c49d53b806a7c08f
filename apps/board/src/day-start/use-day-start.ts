import { useCallback, useEffect, useState } from 'react';
import type { Consequences } from '../board/parts.ts';
import type { BoardSession } from '../live/board-session.ts';
import type { DayPicture } from './day-picture.ts';
import { legendWords, sinceWords } from './day-words.ts';
import type { OpenDayStart } from './open-day-start.ts';

/** The start of the day on this board, and whether it is laid under the drawing. */
export interface DayStartHold {
  /** When it was: '08:12 today'; `undefined` until the plan has come. */
  readonly since: string | undefined;
  readonly isShown: boolean;
  readonly toggle: () => void;
  /** While it is shown. */
  readonly picture: DayPicture | undefined;
  readonly legend: string | undefined;
}

/**
 * Keeps the plan as this machine found it today, and lays it under the drawing when asked.
 *
 * @param board  tells boards, and memberships of one, apart
 */
export function useDayStart(session: BoardSession, board: string, now: Consequences): DayStartHold {
  const start = useStart(session, board);
  const [wanted, setWanted] = useState(false);
  const toggle = useCallback(() => setWanted((before) => !before), []);
  const since = start && sinceWords(new Date(start.at), new Date());
  const picture = wanted ? start?.pictureOf(now) : undefined;
  const things = new Set(picture?.things.map(({ key }) => key.split(' ').slice(0, 2).join(' ')));
  return {
    since,
    isShown: picture !== undefined,
    toggle,
    picture,
    legend: picture && since ? legendWords(since, picture.holes.length, things.size) : undefined,
  };
}

/** The plan as the day began: asked for once, as soon as the plan has come from the server or this machine. */
function useStart(session: BoardSession, board: string): OpenDayStart | undefined {
  const [start, setStart] = useState<OpenDayStart>();
  useEffect(() => {
    let here = true;
    const ask = () => {
      if (session.saved.get().kind === 'joining') return;
      stop();
      const [plan, now] = [session.writtenPlan.get(), new Date()];
      // Fetched when the plan has come, so that the board does not wait for it; what cannot be fetched is not offered.
      void import('./open-day-start.ts')
        .then(({ openDayStart }) => openDayStart(board, now, plan))
        .then(
          (found) => here && setStart(found),
          () => undefined,
        );
    };
    const stop = session.saved.onChange(ask);
    ask();
    return () => {
      here = false;
      stop();
    };
  }, [session, board]);
  return start;
}
