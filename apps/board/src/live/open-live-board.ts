import { compareAnalyses, openAnalysis, steadyRipple } from '@loopwright/analysis';
import { openPlan } from '@loopwright/document';
import { connect } from '@loopwright/document/client';
import type { Plan } from '@loopwright/model';
import type { EnterAnswer } from '@loopwright/protocol';
import { Util } from 'konva/lib/Util.js';
import { type BoardSession, openBoardSession } from './board-session.ts';
import { openPictureClock } from './picture-clock.ts';
import type { CompareStates } from './reckoner.ts';

/** Compared anew each frame, and held still while the differences are smaller than a hand means. */
export const compareSteadily: CompareStates = (before, after, shown) =>
  steadyRipple(shown, compareAnalyses(before, after));

/**
 * An animation frame whose work is on the canvas in the same picture. Konva draws in a frame of its own, asked for at
 * the first change: too late for the picture when the change is made within a frame. So it is asked for beforehand.
 */
function frameWithCanvas(work: () => void): number {
  const handle = requestAnimationFrame(work);
  Util.requestAnimFrame(() => undefined);
  return handle;
}

export interface LiveBoard {
  readonly session: BoardSession;
  /** The server closed for good; the draft is the plan with what it did not take. */
  onClosed(listener: (code: number, draft: Plan | undefined) => void): () => void;
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
  const clock = openPictureClock({
    requestAnimationFrame: frameWithCanvas,
    // A method of the window: it does not work on another object.
    cancelAnimationFrame: (handle) => cancelAnimationFrame(handle),
  });
  const session = openBoardSession({ plan, connection, openAnalysis, compare: compareSteadily, clock });
  return {
    session,
    onClosed: (listener) => connection.onClosed((code, draft) => listener(code, draft && plan.read())),
    close: () => {
      session.close();
      connection.close();
      plan.close();
    },
  };
}
