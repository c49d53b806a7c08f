import { useCallback, useEffect, useMemo, useState } from 'react';
import type { Consequences } from '../board/parts.ts';
import type { BoardSession } from '../live/board-session.ts';
import { type DayPicture, openDayPicture } from './day-picture.ts';
import { legendWords, sinceWords } from './day-words.ts';
import type { DayStart } from './kept-starts.ts';

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
  const pictureOf = useMemo(() => start && openDayPicture(start), [start]);
  const since = start && sinceWords(new Date(start.at), new Date());
  const picture = wanted && pictureOf ? pictureOf(now) : undefined;
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
function useStart(session: BoardSession, board: string): DayStart | undefined {
  const [start, setStart] = useState<DayStart>();
  useEffect(() => {
    let here = true;
    const ask = () => {
      if (session.saved.get().kind === 'joining') return;
      stop();
      const [plan, now] = [session.writtenPlan.get(), new Date()];
      // Fetched when it is needed, so that the board does not wait for it.
      void import('./kept-starts.ts')
        .then(({ startOfDay }) => startOfDay(board, now, plan))
        .catch(() => ({ at: now.getTime(), plan }))
        .then((found) => here && setStart(found));
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
