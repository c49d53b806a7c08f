import { boundsOf } from '@loopwright/geometry';
import { useEffect } from 'react';
import type { GoTo } from '../board/parts.ts';
import { toSite } from '../drawing/site-transform.ts';
import type { Viewpoint } from '../drawing/viewpoint.ts';
import type { ImageImports } from './image-imports.ts';

/** Tells the imports what of the ground is in view: a further picture is laid there. */
export function useSurroundings(imports: ImageImports | undefined, viewpoint: Viewpoint, goTo: GoTo): void {
  useEffect(() => {
    imports?.attach({
      inView: () => {
        const [view, { width, height }] = [viewpoint.view.get(), viewpoint.size.get()];
        return boundsOf([toSite(view, { x: 0, y: 0 }), toSite(view, { x: width, y: height })]);
      },
      showAll: () => goTo({ kind: 'all' }),
    });
  }, [imports, viewpoint, goTo]);
}
