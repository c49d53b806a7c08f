import type { CanvasPoint } from '@loopwright/model';
import type { PointerEvent, RefObject } from 'react';
import { toSite } from '../drawing/site-transform.ts';
import type { Viewpoint } from '../drawing/viewpoint.ts';
import { type Hit, hitAt, type PointerKind, REACH, type Targets } from './hit.ts';
import type { PointerAt } from './tool.ts';

/** What it takes to know where a pointer is. */
export interface PlacesParts {
  readonly surface: RefObject<HTMLElement | null>;
  readonly viewpoint: Viewpoint;
  readonly targets: Targets;
}

interface OnWindow {
  readonly clientX: number;
  readonly clientY: number;
}

/** Where pointers are: on the drawing, on the ground, and over what. */
export function openPointerPlaces(parts: () => PlacesParts) {
  const placeOf = (event: OnWindow): CanvasPoint => {
    const box = parts().surface.current?.getBoundingClientRect();
    return { x: event.clientX - (box?.left ?? 0), y: event.clientY - (box?.top ?? 0) };
  };
  const siteAt = (canvas: CanvasPoint) => toSite(parts().viewpoint.view.get(), canvas);
  const hitUnder = ({ site, kind }: Pick<PointerAt, 'site' | 'kind'>): Hit | undefined => {
    const { targets, viewpoint } = parts();
    return hitAt(targets, site, REACH[kind] / viewpoint.view.get().scale);
  };
  return {
    placeOf,
    hitUnder,
    pointerAt: (event: PointerEvent): PointerAt => {
      const canvas = placeOf(event);
      return {
        canvas,
        site: siteAt(canvas),
        kind: kindOf(event.pointerType),
        ...(event.shiftKey ? { shift: true } : {}),
        ...(event.ctrlKey || event.metaKey ? { adds: true } : {}),
        ...(event.altKey ? { alt: true } : {}),
      };
    },
    /** For events of the mouse that are none of a pointer. */
    hitUnderMouse: (event: OnWindow): Hit | undefined => hitUnder({ site: siteAt(placeOf(event)), kind: 'mouse' }),
  };
}

const kindOf = (type: string): PointerKind => (type === 'touch' || type === 'pen' ? type : 'mouse');
