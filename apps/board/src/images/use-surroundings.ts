import { boundsOf } from '@loopwright/geometry';
import { useEffect } from 'react';
import { toSite } from '../drawing/site-transform.ts';
import type { Viewpoint } from '../drawing/viewpoint.ts';
import type { BoardSession } from '../live/board-session.ts';
import type { ImageImports } from './image-imports.ts';

/** Tells the imports what of the ground is in view: a further picture is laid there. */
export function useSurroundings(
  imports: ImageImports | undefined,
  viewpoint: Viewpoint,
  session: Pick<BoardSession, 'frame' | 'writtenPlan'>,
): void {
  useEffect(() => {
    imports?.attach({
      inView: () => {
        const [view, { width, height }] = [viewpoint.view.get(), viewpoint.size.get()];
        return boundsOf([toSite(view, { x: 0, y: 0 }), toSite(view, { x: width, y: height })]);
      },
      // What was just written is on the frame only with the next picture.
      showAll: () => viewpoint.fit(session.writtenPlan.get(), session.frame.get()?.routing),
    });
  }, [imports, viewpoint, session]);
}
