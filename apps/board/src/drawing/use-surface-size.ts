import { type RefObject, useLayoutEffect } from 'react';
import { useWatched } from '../live/use-watched.ts';
import type { CanvasSize } from './site-transform.ts';
import type { Viewpoint } from './viewpoint.ts';

/** The size of the drawing's place on the page, followed as the window or the panels change. */
export function useSurfaceSize(surface: RefObject<HTMLElement | null>, viewpoint: Viewpoint): CanvasSize {
  useLayoutEffect(() => {
    const element = surface.current;
    if (!element) return undefined;
    const measure = () => {
      const { clientWidth: width, clientHeight: height } = element;
      const known = viewpoint.size.get();
      if (known.width !== width || known.height !== height) viewpoint.resize({ width, height });
    };
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    measure();
    return () => observer.disconnect();
  }, [surface, viewpoint]);
  return useWatched(viewpoint.size);
}
