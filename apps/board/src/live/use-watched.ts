import { useSyncExternalStore } from 'react';
import type { Watched } from './slot.ts';

/** The value of a slot, shown anew when it becomes another one. */
export function useWatched<Value>(watched: Watched<Value>): Value {
  return useSyncExternalStore(watched.onChange, watched.get);
}
