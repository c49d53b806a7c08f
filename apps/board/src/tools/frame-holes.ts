import type { SitePoint } from '@loopwright/model';
import { choosing, chosenHoles } from './chosen-holes.ts';
import { hasTravelled, type Tool } from './tool.ts';

/** Draws a frame over bare paper with Shift held: the holes in it are picked out, with those that were. */
export const frameHoles: Tool = {
  name: 'frame holes',
  begin: (hit, start, hand) => {
    const isPaper = hit === undefined || (hit.kind === 'thing' && hit.by !== 'sign');
    if (!isPaper || !start.shift) return undefined;
    let framing = false;
    return {
      cursor: 'crosshair',
      move: (at) => {
        framing ||= hasTravelled(start, at);
        if (framing) hand.frame([start.site, at.site]);
      },
      end: (at) => {
        hand.frame(undefined);
        if (!framing) return;
        const corners: readonly [SitePoint, SitePoint] = [start.site, at.site];
        hand.select(choosing([...chosenHoles(hand.routing, hand.selection), ...hand.holesIn(corners)]));
      },
      cancel: () => hand.frame(undefined),
    };
  },
};
