import type { SavedState } from '../contract.ts';
import { isSameValue } from '../plain-value.ts';
import { openListeners } from './listeners.ts';
import type { Tally } from './tally.ts';

/** The socket as the head sees it. */
export interface Line {
  readonly isOpen: boolean;
  /** Whether the server's whole state has arrived on this connection. */
  readonly isSynced: boolean;
  /** Whether what is done offline stays on this machine. */
  readonly isKept: boolean;
}

/**
 * What the head says about saving: never more than is known.
 *
 * @param line  the socket at this moment
 */
export function watchSaved(tally: Tally, line: () => Line) {
  const listeners = openListeners<[]>();
  let joined = false;
  let failed = false;
  let code: number | undefined;

  const stateNow = (): SavedState => {
    const { isOpen, isSynced, isKept } = line();
    const waiting = tally.waiting();
    if (code !== undefined) return { kind: 'closed', code };
    if (isOpen && isSynced && tally.isSettled()) return { kind: 'saved' };
    if (isOpen) return joined ? { kind: 'saving', waiting } : { kind: 'joining' };
    return joined || failed ? { kind: 'offline', kept: isKept, waiting } : { kind: 'joining' };
  };
  let shown: SavedState = { kind: 'joining' };
  const look = () => {
    const next = stateNow();
    joined ||= next.kind === 'saved';
    if (isSameValue(shown, next)) return;
    shown = next;
    listeners.tell();
  };
  return {
    state: () => shown,
    onChange: listeners.add,
    look,
    /** Whether everything was in the store once since this page was opened. */
    hasJoined: () => joined,
    /** A try to connect failed, or a connection ended. */
    failed() {
      failed = true;
      look();
    },
    closed(forGood: number) {
      code = forGood;
      look();
    },
  };
}
