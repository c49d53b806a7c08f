import { compareAnalyses, openAnalysis, steadyRipple } from '@loopwright/analysis';
import { openPlan } from '@loopwright/document';
import { connect } from '@loopwright/document/client';
import type { EnterAnswer } from '@loopwright/protocol';
import { type BoardSession, openBoardSession } from './board-session.ts';
import { openPictureClock } from './picture-clock.ts';
import type { CompareStates } from './reckoner.ts';

/** Compared anew each frame, and held still while the differences are smaller than a hand means. */
export const compareSteadily: CompareStates = (before, after, shown) =>
  steadyRipple(shown, compareAnalyses(before, after));

export interface LiveBoard {
  readonly session: BoardSession;
  /** The server closed for good; the draft holds what it did not take. */
  onClosed(listener: (code: number, draft: Uint8Array | undefined) => void): () => void;
  close(): void;
}

/** Opens a board this page has entered: the document, its connection, and the session over both. */
export function openLiveBoard(entered: EnterAnswer, address: Location): LiveBoard {
  const plan = openPlan();
  const secure = address.protocol === 'https:';
  const connection = connect(plan, {
    url: `${secure ? 'wss' : 'ws'}://${address.host}/sync`,
    board: entered.board,
    membership: entered.membership,
    epoch: entered.epoch,
    keepOffline: 'indexedDB' in globalThis,
  });
  const beforeNextPicture = openPictureClock(window);
  const session = openBoardSession({ plan, connection, openAnalysis, compare: compareSteadily, beforeNextPicture });
  return {
    session,
    onClosed: connection.onClosed,
    close: () => {
      session.close();
      connection.close();
      plan.close();
    },
  };
}
