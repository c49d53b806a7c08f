import { lazy, Suspense } from 'react';
import { useWatched } from '../live/use-watched.ts';
import type { ImageImports } from './image-imports.ts';

const ImportStrip = lazy(() => import('./ImportStrip.tsx').then(({ ImportStrip: strip }) => ({ default: strip })));

/** The strip of a picture on its way, fetched with the first picture. */
export function ImportSlot({ imports }: { readonly imports: ImageImports }) {
  const isIdle = useWatched(imports.step).at === 'idle';
  return isIdle ? null : (
    <Suspense fallback={null}>
      <ImportStrip imports={imports} />
    </Suspense>
  );
}
