import { lazy, Suspense } from 'react';
import type { Slot } from '../live/slot.ts';
import { useWatched } from '../live/use-watched.ts';
import type { FeaturesFileProps } from './FeaturesFile.tsx';

const FeaturesFile = lazy(() => import('./FeaturesFile.tsx').then((module) => ({ default: module.FeaturesFile })));

interface FeaturesFileSlotProps extends Pick<FeaturesFileProps, 'session' | 'goTo'> {
  /** The file that was dropped or chosen, until it is added or left. */
  readonly file: Slot<File | undefined>;
}

/** The place on the board where a file of features is taken in; its sheet is fetched with the first file. */
export function FeaturesFileSlot({ file, session, goTo }: FeaturesFileSlotProps) {
  const now = useWatched(file);
  if (!now) return null;
  return (
    <Suspense fallback={null}>
      <FeaturesFile
        key={`${now.name} ${now.lastModified} ${now.size}`}
        file={now}
        session={session}
        goTo={goTo}
        onClose={() => file.set(undefined)}
      />
    </Suspense>
  );
}
