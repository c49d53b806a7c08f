import { lazy, Suspense, useEffect, useRef } from 'react';
import { useWatched } from '../live/use-watched.ts';
import type { HoleHandsViewProps } from './HoleHandsView.tsx';

const LazyView = lazy(() =>
  import('./HoleHandsView.tsx').then(
    ({ HoleHandsView }) => ({ default: HoleHandsView }),
    () => ({ default: NotFetched }),
  ),
);

function NotFetched() {
  return (
    <p className="plan__word" role="alert">
      The menu could not be fetched. Nothing was lost: reload the page once the server can be reached.
    </p>
  );
}

/** The place of the hole menu and its questions: fetched when it is first asked for. */
export function HoleHandsSlot(props: HoleHandsViewProps) {
  const open = useWatched(props.hands.menu);
  const asking = useWatched(props.hands.asking);
  useKeyboardBack(open !== undefined || asking !== undefined);
  return open || asking ? (
    <Suspense>
      <LazyView {...props} />
    </Suspense>
  ) : null;
}

/** What had the keyboard is gone with the menu or the question: the drawing has it then, and not nobody. */
function useKeyboardBack(isOpen: boolean): void {
  const wasOpen = useRef(false);
  useEffect(() => {
    const closed = wasOpen.current && !isOpen;
    wasOpen.current = isOpen;
    if (!closed) return undefined;
    // After the widgets have given it back where they can.
    const timer = setTimeout(() => {
      const drawing = document.querySelector('.plan__surface');
      if (document.activeElement === document.body && drawing instanceof HTMLElement) drawing.focus();
    });
    return () => clearTimeout(timer);
  }, [isOpen]);
}
