import { LIMITS } from '@loopwright/protocol';
import type { Clock, PresenceState, Stop } from '../contract.ts';

/** Says what this page shows the others: not too often, and in step with what it saves. */
export interface Speaker {
  say(state: PresenceState): void;
  /** To be called when what was held back may go out. */
  release(): void;
  close(): void;
}

/**
 * @param tell  sends a state to the others
 * @param isHeld  whether a change of this page is on its way to the store: what follows it waits, so that nothing jumps
 *   back at the drop (P6)
 */
export function openSpeaker(clock: Clock, tell: (state: PresenceState) => void, isHeld: () => boolean): Speaker {
  let newest: PresenceState | undefined;
  let said: PresenceState | undefined;
  let pause: Stop | undefined;
  let repeat: Stop | undefined;

  const tellNow = (state: PresenceState) => {
    said = state;
    tell(state);
    repeat?.();
    // A drag that is held still is said again, or the others would forget it; also while newer words wait.
    repeat = state.drag && clock.after(LIMITS.dragRepeatedAfter, () => tellNow(state));
  };
  const release = () => {
    if (pause !== undefined || newest === undefined || newest === said || isHeld()) return;
    pause = clock.after(LIMITS.presenceEvery, () => {
      pause = undefined;
      release();
    });
    tellNow(newest);
  };
  return {
    say(state) {
      newest = state;
      release();
    },
    release,
    close() {
      pause?.();
      repeat?.();
      newest = undefined;
    },
  };
}
