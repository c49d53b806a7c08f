import { lazy, Suspense } from 'react';
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
  return open || asking ? (
    <Suspense>
      <LazyView {...props} />
    </Suspense>
  ) : null;
}
