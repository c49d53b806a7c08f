import { useCallback, useLayoutEffect, useRef } from 'react';

/** A callback that keeps its identity and always does the newest thing, so that a memoised row is not drawn again. */
export function useSteady<Args extends readonly unknown[], Answer>(newest: (...args: Args) => Answer) {
  const latest = useRef(newest);
  useLayoutEffect(() => {
    latest.current = newest;
  });
  return useCallback((...args: Args): Answer => latest.current(...args), []);
}
