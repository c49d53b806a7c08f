import { type RefObject, useEffect } from 'react';

/**
 * Gives the keyboard to what was opened from another sheet. The button that opened it went with its sheet, so that
 * nothing has the keyboard; whoever has it elsewhere, on the drawing say, keeps it.
 */
export function useArrival(element: RefObject<HTMLElement | null>, isWanted: boolean): void {
  useEffect(() => {
    if (isWanted && document.activeElement === document.body) element.current?.focus({ preventScroll: true });
  }, [element, isWanted]);
}
