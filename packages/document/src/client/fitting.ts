import { LIMITS } from '@loopwright/protocol';
import type { PresenceState } from '../contract.ts';

/** Bytes kept free for the name and ink that the server adds. */
const FOR_THE_STAMP = 400;

/**
 * What is said of a page so that it is heard: a frame that is too large would be dropped whole, pointer and all. A drag
 * that does not fit, such as a long pencil stroke, is left out: the others see what it becomes when it is let go.
 */
export function fitting(state: PresenceState): PresenceState {
  if (!state.drag || bytesOf(state) <= LIMITS.mostPresenceBytes - FOR_THE_STAMP) return state;
  const { drag: _, ...rest } = state;
  return rest;
}

/** Bytes of a state as it is sent. */
function bytesOf(state: PresenceState): number {
  const text = JSON.stringify(state);
  return text.length > LIMITS.mostPresenceBytes ? text.length : new TextEncoder().encode(text).length;
}
