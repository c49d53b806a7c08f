import { lazy, Suspense, useEffect, useMemo, useState } from 'react';
import { placeOf } from './address.ts';
import { Door } from './board/Door.tsx';
import { createBoard } from './live/board-api.ts';
import { openSlot } from './live/slot.ts';

/** Who opens a board does not fetch the home page, nor the other way round. */
const HomePage = lazy(() => import('./home/Home.tsx').then(({ Home }) => ({ default: Home })));
const BoardPage = lazy(() => import('./board/BoardPage.tsx').then(({ BoardPage: page }) => ({ default: page })));

/** Shows what the address names. */
export function App() {
  const [place, setPlace] = useState(() => placeOf(window.location));
  useEffect(() => {
    const follow = () => setPlace(placeOf(window.location));
    window.addEventListener('popstate', follow);
    window.addEventListener('hashchange', follow);
    return () => {
      window.removeEventListener('popstate', follow);
      window.removeEventListener('hashchange', follow);
    };
  }, []);
  const incoming = useMemo(() => openSlot<readonly File[]>([]), []);
  const openLink = (link: string, files: readonly File[] = []) => {
    incoming.set(files);
    window.history.pushState(null, '', new URL(link, window.location.href));
    setPlace(placeOf(window.location));
  };
  if (place.kind === 'home')
    return (
      <Suspense>
        <HomePage createBoard={createBoard} openLink={openLink} />
      </Suspense>
    );
  if (place.kind === 'nowhere')
    return <Door title="There is nothing here" words="Check that the link was copied whole." />;
  return (
    <Suspense fallback={<Door title="Opening the board …" />}>
      <BoardPage
        key={`${place.board} ${place.secret}`}
        board={place.board}
        secret={place.secret}
        openLink={openLink}
        incoming={incoming}
      />
    </Suspense>
  );
}
